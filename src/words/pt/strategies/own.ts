/** Why a formula of the user's own is none, by the engine's code. */
export const OWN_REFUSALS: Readonly<Record<string, string>> = {
  'own-empty': 'A fórmula está vazia. Escreva uma sobre a copa, como TRVc / 10000.',
  'own-too-long': 'A fórmula tem {length} caracteres; leem-se no máximo {most}. Encurte-a.',
  'own-too-deep': 'Mais de {most} termos da fórmula estão uns dentro dos outros. Divida-a, ou retire parênteses.',
  'own-character': '“{character}” na posição {at} não pertence a nenhuma fórmula. Admitem-se números com ponto decimal, + - * / ^, parênteses, nomes, e vírgulas entre os termos de uma função.',
  'own-syntax': 'Na posição {at} falta ou sobra alguma coisa. Procure aí um sinal, um termo ou um parêntese.',
  'own-number': '{number} não pode estar numa fórmula. Escreva números de 0.000001 a 1 000 000 000 000, sem expoente.',
  'own-unknown-name': '{name} não é o nome de um valor da copa. Há: {known}.',
  'own-unknown-name-near': '{name} não é o nome de um valor da copa. Queria dizer {nearest}? Há: {known}.',
  'own-unknown-function': '{name} não é uma função aqui. Há: {known}. Escreva uma multiplicação com *.',
  'own-unknown-function-near': '{name} não é uma função aqui. Queria dizer {nearest}? Há: {known}. Escreva uma multiplicação com *.',
  'own-arguments': '{name} leva {least} a {most} termos, estão lá {count}. Ponha vírgulas entre eles, e um ponto nos decimais.',
  'own-member': 'Há um ponto entre nomes. Escreva os decimais com algarismos à volta do ponto, e os nomes sozinhos.',
  'own-several': 'Isto não é uma só fórmula: falta um sinal entre dois termos. Escreva uma multiplicação com *.',
  'own-not-arithmetic': 'Isto é mais do que aritmética. Admitem-se + - * / ^, parênteses, números, nomes e funções.'
};
