# What the language is called by those who speak it.
language-name = 简体中文
# The country whose lists and decimals are written.
language-locale = zh-Hans-CN
