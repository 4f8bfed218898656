#include "app/store/profile_store.h"

#include <QDateTime>
#include <cmath>

#include "core/hand/free_hand.h"
#include "core/hand/hand_pose.h"

namespace fb {

namespace profile_store_detail {

constexpr int kLearner = 1;  // the one of this account

QVariant stored(const std::optional<Cm>& length)
{
    return length ? QVariant(length->value()) : QVariant(QMetaType::fromType<double>());
}

template <class Enum>
QVariant stored(Enum value)
{
    const std::string_view word = wordOf(value);
    return QString::fromLatin1(word.data(), static_cast<qsizetype>(word.size()));
}

QVariant now() { return QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs); }

std::optional<Cm> lengthFrom(const QVariant& stored)
{
    bool isNumber = false;
    const double value = stored.toDouble(&isNumber);
    return isNumber && !stored.isNull() && std::isfinite(value) ? std::optional(Cm{value}) : std::nullopt;
}

std::optional<Cm> checked(const std::optional<Cm>& length, Result<Cm> (*check)(Cm))
{
    return length && check(*length) ? length : std::nullopt;
}

Profile profileFrom(const QVariantList& row)
{
    Profile profile;
    profile.handLength = checked(lengthFrom(row[0]), &checkedHandLength);
    profile.fingerWidth = checked(lengthFrom(row[1]), &checkedFingerWidth);
    profile.handedness = sideFrom(row[2].toString().toStdString()).value_or(Side::Right);
    profile.sex = sexFrom(row[3].toString().toStdString());
    profile.stature = lengthFrom(row[4]);
    return profile;
}

}  // namespace profile_store_detail

using namespace profile_store_detail;

Result<Remembered> readProfile(const Store& store)
{
    const auto profiles =
        store.rows({QStringLiteral("SELECT hand_length_cm, finger_width_cm, writing_hand, sex, stature_cm "
                                   "FROM profile WHERE profile_id = ?"),
                    {kLearner}});
    if (!profiles)
        return tl::unexpected(profiles.error());
    const auto screens = store.rows({QStringLiteral("SELECT screen_key, pixels_per_mm FROM screen")});
    if (!screens)
        return tl::unexpected(screens.error());
    Remembered read;
    if (!profiles->empty())
        read.profile = profileFrom(profiles->front());
    for (const QVariantList& row : *screens)
        read.scales[row[0].toString()] = PixelsPerMm{row[1].toDouble()};
    return read;
}

Result<bool> writeProfile(Store& store, const Profile& profile)
{
    const QString sql = QStringLiteral(
        "INSERT INTO profile (profile_id, hand_length_cm, finger_width_cm, writing_hand, sex, stature_cm, "
        "updated_at) VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (profile_id) DO UPDATE SET "
        "hand_length_cm = excluded.hand_length_cm, finger_width_cm = excluded.finger_width_cm, "
        "writing_hand = excluded.writing_hand, sex = excluded.sex, stature_cm = excluded.stature_cm, "
        "updated_at = excluded.updated_at");
    const QVariant sex = profile.sex ? stored(*profile.sex) : QVariant(QMetaType::fromType<QString>());
    return store.commit({{sql,
                          {kLearner, stored(profile.handLength), stored(profile.fingerWidth),
                           stored(profile.handedness), sex, stored(profile.stature), now()}}});
}

Result<bool> writeScale(Store& store, const QString& screen, PixelsPerMm scale)
{
    const QString sql =
        QStringLiteral("INSERT INTO screen (screen_key, pixels_per_mm, updated_at) VALUES (?, ?, ?) "
                       "ON CONFLICT (screen_key) DO UPDATE SET pixels_per_mm = excluded.pixels_per_mm, "
                       "updated_at = excluded.updated_at");
    return store.commit({{sql, {screen, scale.value(), now()}}});
}

void ProfileStore::load(QObject* asker, std::function<void(const Remembered&)> then)
{
    m_thread.ask(asker, [this, then = std::move(then)](const Result<Store*>& store) -> StoreThread::Then {
        auto read = store.and_then([](Store* open) { return readProfile(*open); });
        Remembered remembered = read ? *read : Remembered{};
        remembered.trouble = read ? m_thread.takeTold() : std::optional(read.error());
        return [then, remembered] { then(remembered); };
    });
}

void ProfileStore::save(const Profile& profile, QObject* asker, Saved then)
{
    m_thread.ask(asker, [profile, then = std::move(then)](const Result<Store*>& store) -> StoreThread::Then {
        const auto saved = store.and_then([&](Store* open) { return writeProfile(*open, profile); });
        return [then, saved] { then(saved); };
    });
}

void ProfileStore::saveScale(const QString& screen, PixelsPerMm scale, QObject* asker, Saved then)
{
    m_thread.ask(asker, [=, then = std::move(then)](const Result<Store*>& store) -> StoreThread::Then {
        const auto saved = store.and_then([&](Store* open) { return writeScale(*open, screen, scale); });
        return [then, saved] { then(saved); };
    });
}

}  // namespace fb
