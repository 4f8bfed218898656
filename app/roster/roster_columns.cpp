#include "app/roster/roster_columns.h"

#include <QHash>
#include <QLocale>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/roster/csv.h"

namespace fb {

namespace columns_detail {

// Letters and digits only, small, without accents: "Nº de matrícula" is "nodematricula".
QString plainName(const QString& name)
{
    QString plain;
    for (const QChar c : name.normalized(QString::NormalizationForm_KD).toLower()) {
        if (c.isLetterOrNumber())
            plain += c;
    }
    return plain;
}

struct Meaning {
    RosterColumn column;
    const char* names;  // plain, between blanks
};

constexpr std::array kMeanings{
    Meaning{
        RosterColumn::Id,
        " id sourcedid identifier studentid studentidentifier studentnumber studentno idnumber externalid "
        "netid number matriculationnumber matricula numerodematricula nodematricula numero idestudiante "
        "iddeestudiante numerodeestudiante nodeestudiante codigo codigodeestudiante identificador "
        "identificacion expediente dni cedula "},
    Meaning{RosterColumn::Family,
            " family familyname lastname last surname apellido apellidos primerapellido "},
    Meaning{RosterColumn::Given,
            " given givenname givennames firstname first forename forenames nombre nombres nombredepila "},
    Meaning{RosterColumn::FullName,
            " name fullname studentname student studentfullname displayname nombrecompleto estudiante alumno "
            "alumna apellidosynombre apellidosynombres nombreyapellido nombreyapellidos "},
    Meaning{RosterColumn::Section, " section class group cohort course seccion grupo clase cohorte curso "},
    Meaning{RosterColumn::ExtraPercent,
            " extra extratime extratimepercent extrapercent accommodation accommodationpercent tiempoextra "
            "tiempoadicional adaptacion porcentajeextra "},
    Meaning{RosterColumn::Language, " language locale lang idioma lengua "},
};

int& at(RosterMapping& mapping, RosterColumn column) { return mapping[static_cast<std::size_t>(column)]; }

RosterMapping nothing()
{
    RosterMapping mapping{};
    mapping.fill(-1);
    return mapping;
}

// Overrides and isolates: what follows would be shown in another order than it is kept in.
bool turnsDirection(QChar c)
{
    return (c >= QChar(0x202A) && c <= QChar(0x202E)) || (c >= QChar(0x2066) && c <= QChar(0x2069));
}

// Nothing in it that tidyText() could change: most names, and a hundred thousand rows want to be read at
// once.
bool isTidy(const QString& text)
{
    constexpr char16_t kFirstCombining = 0x300;
    bool wasBlank = true;
    for (const QChar c : text) {
        const bool isBlank = c == u' ';
        const bool isLetter =
            (c > u' ' && c < QChar(0x7F)) || (c > QChar(0xA0) && c < QChar(kFirstCombining));
        if ((!isBlank && !isLetter) || (isBlank && wasBlank))
            return false;
        wasBlank = isBlank;
    }
    return (text.isEmpty() || !wasBlank) && !text.startsWith(u'\'');
}

QHash<QString, QString> languagesByName()
{
    QHash<QString, QString> codes;
    const auto all =
        QLocale::matchingLocales(QLocale::AnyLanguage, QLocale::AnyScript, QLocale::AnyTerritory);
    for (const QLocale& locale : all) {
        const QString code = QLocale::languageToCode(locale.language());
        if (code.isEmpty() || locale.language() == QLocale::C)
            continue;
        codes.insert(plainName(code), code);
        codes.insert(plainName(QLocale::languageToString(locale.language())), code);
        codes.insert(plainName(locale.nativeLanguageName()), code);
    }
    codes.remove(QString());
    codes.insert(QStringLiteral("castellano"), QStringLiteral("es"));
    codes.insert(QStringLiteral("ingles"), QStringLiteral("en"));
    return codes;
}

}  // namespace columns_detail

bool isOneRoster(const QStringList& header)
{
    return header.contains(QLatin1String("sourcedId")) && header.contains(QLatin1String("givenName")) &&
           header.contains(QLatin1String("familyName"));
}

bool isSecretColumn(const QString& name)
{
    const QString plain = columns_detail::plainName(name);
    return plain.contains(QLatin1String("password")) || plain.contains(QLatin1String("contrasena"));
}

RosterMapping guessedMapping(const QStringList& header)
{
    using namespace columns_detail;
    RosterMapping mapping = nothing();
    for (int index = 0; index < header.size(); ++index) {
        const QString plain = plainName(header[index]);
        if (plain.isEmpty())
            continue;
        const QString name = QLatin1Char(' ') + plain + QLatin1Char(' ');
        for (const Meaning& meaning : kMeanings) {
            if (at(mapping, meaning.column) < 0 && QLatin1String(meaning.names).contains(name))
                at(mapping, meaning.column) = index;
        }
    }
    // An identifier may stand beside it and may be empty.
    if (isOneRoster(header))
        at(mapping, RosterColumn::Id) = static_cast<int>(header.indexOf(QLatin1String("sourcedId")));
    // A given name alone is the whole one.
    if (at(mapping, RosterColumn::Family) < 0 && at(mapping, RosterColumn::FullName) < 0)
        std::swap(at(mapping, RosterColumn::Given), at(mapping, RosterColumn::FullName));
    return mapping;
}

bool isHeader(const QStringList& row)
{
    return guessedMapping(row) != columns_detail::nothing() || isOneRoster(row);
}

RosterMapping mappingOfRow(const QStringList& row)
{
    using namespace columns_detail;
    RosterMapping mapping = nothing();
    std::vector<int> names;
    for (int index = 0; index < row.size(); ++index) {
        const QString field = tidyText(row[index]);
        const bool hasDigit = std::any_of(field.begin(), field.end(), [](QChar c) { return c.isDigit(); });
        if (hasDigit && !field.contains(QLatin1Char(' ')) && at(mapping, RosterColumn::Id) < 0)
            at(mapping, RosterColumn::Id) = index;
        else if (!hasDigit && !field.isEmpty())
            names.push_back(index);
    }
    if (names.size() == 1) {
        at(mapping, RosterColumn::FullName) = names.front();
    } else if (names.size() > 1) {
        at(mapping, RosterColumn::Family) = names[0];
        at(mapping, RosterColumn::Given) = names[1];
    }
    return mapping;
}

int inventedColumn(const QStringList& header)
{
    return static_cast<int>(header.indexOf(QLatin1String("invented")));
}

SplitName splitName(const QString& full)
{
    const QString name = tidyText(full);
    const qsizetype comma = name.indexOf(QLatin1Char(','));
    if (comma >= 0)
        return {name.left(comma).trimmed(), name.mid(comma + 1).trimmed()};
    QStringList words = name.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    if (words.size() < 2)
        return {name, {}};
    qsizetype family = words.size() - 1;
    const auto isSmall = [](const QString& word) { return word.front().isLower(); };
    // Where all is written small, small words tell nothing.
    while (!isSmall(words.front()) && family > 1 && isSmall(words[family - 1]))
        --family;
    return {words.mid(family).join(QLatin1Char(' ')), words.mid(0, family).join(QLatin1Char(' '))};
}

QString tidyText(const QString& field)
{
    if (columns_detail::isTidy(field))
        return field;
    QString text = withoutGuard(field).normalized(QString::NormalizationForm_C);
    for (QChar& c : text) {
        if (c.category() == QChar::Other_Control)
            c = QLatin1Char(' ');
    }
    text.removeIf(columns_detail::turnsDirection);
    return text.simplified();
}

std::optional<int> extraPercentIn(const QString& field)
{
    QString text = tidyText(field);
    if (text.isEmpty())
        return 0;
    if (text.endsWith(QLatin1Char('%')))
        text = text.chopped(1).trimmed();
    bool isNumber = false;
    const int percent = text.toInt(&isNumber);
    // From 1 to 4 it may be meant as so many times the time.
    constexpr int kLeast = 5;
    const bool isClear = percent == 0 || (percent >= kLeast && percent <= kMostExtraPercent);
    return isNumber && isClear ? std::optional(percent) : std::nullopt;
}

QString languageIn(const QString& field)
{
    static const QHash<QString, QString> codes = columns_detail::languagesByName();
    const QString text = tidyText(field);
    const auto whole = codes.constFind(columns_detail::plainName(text));
    if (whole != codes.cend())
        return *whole;
    const qsizetype sign =
        text.indexOf(QLatin1Char('-')) >= 0 ? text.indexOf(QLatin1Char('-')) : text.indexOf(QLatin1Char('_'));
    if (sign < 0)
        return {};
    // A country beside the language; the program's own languages know none.
    return codes.value(columns_detail::plainName(text.left(sign)));
}

}  // namespace fb
