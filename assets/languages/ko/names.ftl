# What the language is called by those who speak it.
language-name = 한국어
# The country whose lists and decimals are written.
language-locale = ko-KR
