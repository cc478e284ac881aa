# What the language is called by those who speak it.
language-name = 繁體中文
# The country whose lists and decimals are written.
language-locale = zh-Hant-TW
