#include "app/lock/pin.h"

#include <argon2.h>
#include <gtest/gtest.h>

#include <QByteArray>
#include <QStringList>
#include <array>
#include <cstdint>
#include <cstring>
#include <vector>

namespace fb::test::pin_tests {

namespace pin_test {

Problem problemOf(const QString& pin)
{
    const auto checked = checkedPin(pin);
    return checked ? Problem::PinWrong : checked.error().problem;
}
constexpr Problem kFine = Problem::PinWrong;

}  // namespace pin_test

TEST(PinTest, AShortOneIsRefused)
{
    using namespace pin_test;
    EXPECT_EQ(problemOf(""), Problem::PinTooShort);
    EXPECT_EQ(problemOf("84721"), Problem::PinTooShort);
    EXPECT_EQ(problemOf("847213"), kFine);
    EXPECT_EQ(checkedPin("1").error().low, 6.0);
    // Counted in letters, not in what they are kept in.
    EXPECT_EQ(problemOf(QString::fromUtf8("🦀🐟🦀🐟🐢")), Problem::PinTooShort);
    EXPECT_EQ(problemOf(QString::fromUtf8("🦀🐟🦀🐟🐢🐟")), kFine);
}

TEST(PinTest, WhatAnybodyWouldTryFirstIsRefused)
{
    using namespace pin_test;
    const QStringList bad{"000000",   "999999999", "aaaaaa", "123456",    "012345", "1234567890",
                          "567890",   "890123",    "654321", "987654321", "210987", "abcdef",
                          "fedcba",   "ABCDEF",    "121212", "123123",    "159753", "password",
                          "PassWord", "qwerty",    "nursing"};
    for (const QString& pin : bad)
        EXPECT_EQ(problemOf(pin), Problem::PinTooCommon) << pin.toStdString();
    const QStringList good{"135790",    "123457", "112358", "abcdeg", "correct horse battery staple",
                           "password7k"};
    for (const QString& pin : good)
        EXPECT_EQ(problemOf(pin), kFine) << pin.toStdString();
}

TEST(PinTest, DigitsOfAnyScriptAreDigits)
{
    using namespace pin_test;
    EXPECT_EQ(problemOf(QString::fromUtf8("١٢٣٤٥٦")), Problem::PinTooCommon);
    EXPECT_EQ(problemOf(QString::fromUtf8("１２３１２３")), Problem::PinTooCommon);
    const QString hash = pinHash("847213").value();
    EXPECT_TRUE(pinMatches(hash, QString::fromUtf8("٨٤٧٢١٣")));
    EXPECT_TRUE(
        pinMatches(pinHash(QString::fromUtf8("p\u00e9tale")).value(), QString::fromUtf8("pe\u0301tale")));
}

TEST(PinTest, OnlyTheSamePinMatches)
{
    const QString hash = pinHash("847213").value();
    EXPECT_TRUE(pinMatches(hash, "847213"));
    for (const char* wrong : {"847214", "84721", "8472130", "", " 847213"})
        EXPECT_FALSE(pinMatches(hash, QLatin1String(wrong))) << wrong;
    const QString cased = pinHash("Wing-nut").value();
    EXPECT_FALSE(pinMatches(cased, "wing-nut"));
}

TEST(PinTest, EveryHashHasASaltOfItsOwnAndSaysHowItWasMade)
{
    const QString one = pinHash("847213").value();
    const QString other = pinHash("847213").value();
    EXPECT_NE(one, other);
    // OWASP Password Storage Cheat Sheet, 2026: Argon2id with m = 19456 KiB, t = 2, p = 1 at least.
    EXPECT_TRUE(one.startsWith("$argon2id$v=19$m=19456,t=2,p=1$")) << one.toStdString();
    EXPECT_FALSE(one.contains("847213"));
}

TEST(PinTest, ADamagedHashMatchesNothing)
{
    const QString hash = pinHash("847213").value();
    for (const QString& damaged : {QString(), QStringLiteral("847213"), hash.left(hash.size() - 1),
                                   hash + hash, hash.mid(1), QString(hash).replace("t=2", "t=0"),
                                   QString(hash).replace("m=19456", "m=4294967295"), QString(100000, u'$')})
        EXPECT_FALSE(pinMatches(damaged, "847213")) << damaged.left(80).toStdString();
}

// RFC 9106, 5.3: the published tag of Argon2id. It holds the other library to the standard ...
TEST(PinTest, TheOracleGivesTheTagOfRfc9106)
{
    std::array<std::uint8_t, 32> tag{}, password{};
    std::array<std::uint8_t, 16> salt{};
    std::array<std::uint8_t, 8> secret{};
    std::array<std::uint8_t, 12> data{};
    password.fill(1);
    salt.fill(2);
    secret.fill(3);
    data.fill(4);
    argon2_context context{};
    context.out = tag.data();
    context.outlen = tag.size();
    context.pwd = password.data();
    context.pwdlen = password.size();
    context.salt = salt.data();
    context.saltlen = salt.size();
    context.secret = secret.data();
    context.secretlen = secret.size();
    context.ad = data.data();
    context.adlen = data.size();
    context.t_cost = 3;
    context.m_cost = 32;
    context.lanes = context.threads = 4;
    context.version = ARGON2_VERSION_13;
    ASSERT_EQ(argon2id_ctx(&context), ARGON2_OK);
    EXPECT_EQ(QByteArray(reinterpret_cast<const char*>(tag.data()), tag.size()).toHex(),
              "0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659");
}

// ... and that library agrees with what is kept here.
TEST(PinTest, AnotherLibraryComputesTheSameHash)
{
    for (const char* pin : {"847213", "correct horse battery staple", "p\xc3\xa9tale"}) {
        const QString kept = pinHash(QString::fromUtf8(pin)).value();
        const QStringList parts = kept.split(u'$');
        ASSERT_EQ(parts.size(), 6);
        const QByteArray salt = QByteArray::fromBase64(parts[4].toLatin1());
        const QByteArray hash = QByteArray::fromBase64(parts[5].toLatin1());
        QByteArray computed(hash.size(), '\0');
        ASSERT_EQ(argon2id_hash_raw(2, 19456, 1, pin, std::strlen(pin), salt.constData(),
                                    static_cast<std::size_t>(salt.size()), computed.data(),
                                    static_cast<std::size_t>(computed.size())),
                  ARGON2_OK);
        EXPECT_EQ(computed.toHex(), hash.toHex());
        EXPECT_EQ(argon2id_verify(kept.toLatin1().constData(), pin, std::strlen(pin)), ARGON2_OK);
    }
}

TEST(PinTest, TheDelayDoublesFromTheThirdWrongOne)
{
    const std::vector<std::pair<int, int>> table{{-1, 0},
                                                 {0, 0},
                                                 {1, 0},
                                                 {2, 0},
                                                 {3, 1},
                                                 {4, 2},
                                                 {5, 4},
                                                 {10, 128},
                                                 {14, 2048},
                                                 {15, 3600},
                                                 {16, 3600},
                                                 {1000, 3600},
                                                 {2000000000, 3600}};
    for (const auto& [wrong, seconds] : table)
        EXPECT_EQ(pinDelay(wrong), seconds) << wrong;
}

}  // namespace fb::test::pin_tests
