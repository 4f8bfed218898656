#include "tests/support/pseudo_translator.h"

#include <array>
#include <utility>

namespace fb::test {

QString pseudo(const QString& source)
{
    static constexpr std::array<std::pair<char16_t, char16_t>, 10> kAccents{{{u'a', u'á'},
                                                                             {u'e', u'ë'},
                                                                             {u'i', u'ï'},
                                                                             {u'o', u'ô'},
                                                                             {u'u', u'ü'},
                                                                             {u'c', u'ç'},
                                                                             {u'y', u'ý'},
                                                                             {u'A', u'Å'},
                                                                             {u'N', u'Ñ'},
                                                                             {u'S', u'Š'}}};
    QString accented = source;
    for (const auto& [plain, accent] : kAccents)
        accented.replace(QChar(plain), QChar(accent));
    // Real words get longer too, so the extra length comes as words.
    constexpr double kLonger = 0.4;
    const QString filler = QStringLiteral(" lôrëm ïpsüm dôlôr sït ámët çônsëçtëtür ádïpïsçïng ëlït");
    const auto extra = static_cast<qsizetype>(static_cast<double>(source.size()) * kLonger + 0.5);
    while (accented.size() < source.size() + extra) {
        const qsizetype missing = source.size() + extra - accented.size();
        accented += filler.left(std::max<qsizetype>(missing, 2));
    }
    return accented;
}

QString PseudoTranslator::translate(const char*, const char* source, const char*, int n) const
{
    QString words = QString::fromUtf8(source);
    // A plural in the source's own short form.
    if (n >= 0)
        words.replace(QLatin1String("(s)"), n == 1 ? QString() : QStringLiteral("s"));
    return pseudo(words);
}

}  // namespace fb::test
