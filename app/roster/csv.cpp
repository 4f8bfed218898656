#include "app/roster/csv.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace fb {

namespace csv_detail {

constexpr QChar kQuote = u'"';
constexpr QChar kGuard = u'\'';

bool endsLine(QChar c) { return c == u'\n' || c == u'\r'; }

class CsvReader {
public:
    CsvReader(const QString& name, const QString& text, QChar separator)
        : m_name(name),
          m_text(text),
          m_separator(separator)
    {
    }

    Result<std::vector<CsvRow>> read()
    {
        std::vector<CsvRow> rows;
        while (m_at < m_text.size()) {
            if (endsLine(m_text[m_at])) {
                passLineEnd();
                continue;
            }
            CsvRow row;
            row.line = m_line;
            do {
                if (!readField(row.fields))
                    return fault(Problem::CsvBroken, m_name.toStdString(), std::to_string(m_quoteLine));
            } while (passSeparator());
            passLineEnd();
            rows.push_back(std::move(row));
        }
        return rows;
    }

private:
    // False: a quotation mark was never closed.
    bool readField(QStringList& fields)
    {
        QString quoted;
        if (m_at < m_text.size() && m_text[m_at] == kQuote && !readQuoted(quoted))
            return false;
        const qsizetype from = m_at;
        while (m_at < m_text.size() && m_text[m_at] != m_separator && !endsLine(m_text[m_at]))
            ++m_at;
        // What stands between a closing mark and the separator belongs to the field.
        fields.append(quoted + m_text.mid(from, m_at - from));
        return true;
    }

    bool readQuoted(QString& field)
    {
        m_quoteLine = m_line;
        ++m_at;
        for (;;) {
            const qsizetype close = m_text.indexOf(kQuote, m_at);
            if (close < 0)
                return false;
            takeLines(field, close);
            m_at = close + 1;
            if (m_at >= m_text.size() || m_text[m_at] != kQuote)
                return true;
            field += kQuote;
            ++m_at;
        }
    }

    // A quoted field may run over several lines.
    void takeLines(QString& field, qsizetype end)
    {
        const QStringView part = QStringView(m_text).mid(m_at, end - m_at);
        field += part;
        for (qsizetype i = 0; i < part.size(); ++i) {
            if (part[i] == u'\n' || (part[i] == u'\r' && !(i + 1 < part.size() && part[i + 1] == u'\n')))
                ++m_line;
        }
    }

    bool passSeparator()
    {
        const bool is = m_at < m_text.size() && m_text[m_at] == m_separator;
        m_at += is ? 1 : 0;
        return is;
    }

    void passLineEnd()
    {
        if (m_at >= m_text.size())
            return;
        const bool isPair = m_text[m_at] == u'\r' && m_at + 1 < m_text.size() && m_text[m_at + 1] == u'\n';
        m_at += isPair ? 2 : 1;
        ++m_line;
    }

    const QString& m_name;
    const QString& m_text;
    const QChar m_separator;
    qsizetype m_at = 0;
    int m_line = 1;
    int m_quoteLine = 0;
};

// A spreadsheet takes such a text for a formula; or a guard already stands before one.
bool needsGuard(const QString& text)
{
    const auto first = std::find_if(text.begin(), text.end(), [](QChar c) { return c != kGuard; });
    return first != text.end() && QStringView(u"=+-@\t\r\0", 7).contains(*first);
}

}  // namespace csv_detail

Result<std::vector<CsvRow>> parseCsv(const QString& name, const QString& text, QChar separator)
{
    return csv_detail::CsvReader(name, text, separator).read();
}

QByteArray csvText(const QString& text)
{
    using namespace csv_detail;
    QString field = needsGuard(text) ? kGuard + text : text;
    const bool isPlain = std::none_of(field.cbegin(), field.cend(),
                                      [](QChar c) { return c == u',' || c == kQuote || endsLine(c); });
    if (isPlain)
        return field.toUtf8();
    field.replace(kQuote, QStringLiteral("\"\""));
    return (kQuote + field + kQuote).toUtf8();
}

QString withoutGuard(const QString& field)
{
    using namespace csv_detail;
    return field.startsWith(kGuard) && needsGuard(field) ? field.mid(1) : field;
}

QByteArray csvNumber(double value, int decimals)
{
    if (!std::isfinite(value))
        return {};
    const QByteArray number = QByteArray::number(value, 'f', decimals);
    // Nothing is less than nothing once it is rounded.
    const bool isNothing =
        std::all_of(number.begin(), number.end(), [](char c) { return c == '-' || c == '0' || c == '.'; });
    return isNothing && number.startsWith('-') ? number.mid(1) : number;
}

}  // namespace fb
