#include "app/lock/pin.h"

#include <sodium.h>

#include <QByteArray>
#include <QList>
#include <algorithm>
#include <array>

#include "app/lock/common_pins.h"

namespace fb {

namespace pin_detail {

constexpr unsigned long long kPasses = 2;
constexpr std::size_t kMemory = std::size_t{19456} * 1024;  // bytes

bool isReady()
{
    static const bool ready = sodium_init() >= 0;
    return ready;
}

// The same PIN from every keyboard: one spelling of composed letters, and the digits of any script as digits.
QString spelled(const QString& pin)
{
    QString text = pin.normalized(QString::NormalizationForm_KC);
    for (QChar& c : text) {
        if (c.isDigit())
            c = QChar(u'0' + c.digitValue());
    }
    return text;
}

// One step all the way: 0, the same again; 1, up; -1, down. From nine on a run goes on at nought.
bool isRun(const QList<uint>& letters, int step)
{
    constexpr auto isDigit = [](uint c) { return c >= u'0' && c <= u'9'; };
    return std::adjacent_find(letters.begin(), letters.end(), [&](uint a, uint b) {
               const int apart = static_cast<int>(b) - static_cast<int>(a);
               const bool turnsOver = step != 0 && isDigit(a) && isDigit(b) && apart == -9 * step;
               return apart != step && !turnsOver;
           }) == letters.end();
}

}  // namespace pin_detail

Result<bool> checkedPin(const QString& pin)
{
    using namespace pin_detail;
    const QString text = spelled(pin).toLower();
    const QList<uint> letters = text.toUcs4();
    if (letters.size() < kLeastPinLength)
        return fault(Problem::PinTooShort, {}, {}, kLeastPinLength);
    if (isRun(letters, 0) || isRun(letters, 1) || isRun(letters, -1) ||
        std::find(kCommonPins.begin(), kCommonPins.end(), text) != kCommonPins.end())
        return fault(Problem::PinTooCommon);
    return true;
}

Result<QString> pinHash(const QString& pin)
{
    using namespace pin_detail;
    const QByteArray text = spelled(pin).toUtf8();
    std::array<char, crypto_pwhash_STRBYTES> hash{};
    if (!isReady() ||
        crypto_pwhash_str_alg(hash.data(), text.constData(), static_cast<unsigned long long>(text.size()),
                              kPasses, kMemory, crypto_pwhash_ALG_ARGON2ID13) != 0)
        return fault(Problem::StoreNotWritable);
    return QString::fromLatin1(hash.data());
}

bool pinMatches(const QString& hash, const QString& pin)
{
    using namespace pin_detail;
    const QByteArray kept = hash.toLatin1();
    const QByteArray text = spelled(pin).toUtf8();
    return isReady() && kept.size() < static_cast<qsizetype>(crypto_pwhash_STRBYTES) &&
           crypto_pwhash_str_verify(kept.constData(), text.constData(),
                                    static_cast<unsigned long long>(text.size())) == 0;
}

int pinDelay(int wrongInARow)
{
    constexpr int kFree = 2;
    constexpr int kLongest = 3600;
    constexpr int kDoublings = 12;  // 4096 s, over the longest
    if (wrongInARow <= kFree)
        return 0;
    return std::min(kLongest, 1 << std::min(wrongInARow - kFree - 1, kDoublings));
}

}  // namespace fb
