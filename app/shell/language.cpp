#include "app/shell/language.h"

#include <QCoreApplication>
#include <QLocale>

namespace fb {

void Language::use(const QString& name)
{
    const QLocale locale = name.isEmpty() ? QLocale::system() : QLocale(name);
    QLocale::setDefault(locale);
    QCoreApplication::removeTranslator(&m_translator);
    const auto load = [this](const QLocale& wanted) {
        return m_translator.load(wanted, QStringLiteral("fingerbreadth"), QStringLiteral("_"),
                                 QStringLiteral(":/i18n"));
    };
    if (load(locale) || load(QLocale(QLocale::English)))
        QCoreApplication::installTranslator(&m_translator);
}

}  // namespace fb
