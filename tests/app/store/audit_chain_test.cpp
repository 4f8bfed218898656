#include "app/store/audit_chain.h"

#include <gtest/gtest.h>
#include <sodium.h>

#include <array>

#include "tests/support/record_folder.h"

namespace fb::test::audit_chain_tests {

namespace audit_chain_test {

AuditEntry entry(qint64 seq, const char* at, const char* event, const char* object, const char* detail)
{
    return {seq,
            QLatin1String(at),
            QStringLiteral("instr-07"),
            QLatin1String(event),
            QLatin1String(object),
            QLatin1String(detail)};
}

// Three records, their heads computed independently of this program (Python's hashlib and hmac).
const std::array<QByteArray, 3> kRecords{
    "1|2026-01-15T14:03:22.000Z|instr-07|GRADE|att-0001|pass",
    "2|2026-01-15T14:05:10.000Z|instr-07|GRADE|att-0002|fail",
    "3|2026-01-15T14:06:00.000Z|instr-07|OVERRIDE|att-0002|pass|reason=screen froze"};
const std::array<QByteArray, 3> kHeads{"5413455e52d688df916d98cab37106bf1e41fd66866839cd5cce1e7537ef86f6",
                                       "1bf07c777ec38b96a99557c411b7fe2a1fb811e56e0e76a1d1f3bc9543f0e3a2",
                                       "31eeae30572c14b1dd7e221d391ba36ed59768cc59f7a4c4d65aa55375a4cd6f"};

QByteArray headOf(const std::array<QByteArray, 3>& records)
{
    QByteArray head = chainStart();
    for (const QByteArray& record : records)
        head = chained(head, record);
    return head;
}

}  // namespace audit_chain_test

using namespace audit_chain_test;

TEST(AuditChainTest, ShaIsThatOfTheStandard)
{
    // FIPS 180-4: "abc", and the message of 448 bits.
    EXPECT_EQ(sha256("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(sha256({}), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST(AuditChainTest, EveryHeadFollowsFromTheOneBefore)
{
    EXPECT_EQ(chainStart(), QByteArray(64, '0'));
    QByteArray head = chainStart();
    for (std::size_t i = 0; i < kRecords.size(); ++i) {
        head = chained(head, kRecords[i]);
        EXPECT_EQ(head, kHeads[i]) << i;
    }
}

TEST(AuditChainTest, OneWordChangedChangesTheHead)
{
    auto changed = kRecords;
    changed[1].replace("fail", "pass");
    EXPECT_EQ(headOf(changed), "173b9a992c587922c0ee8ff6c607600a72b975d24b9f035ed91e6a1bd3933dd2");
    auto swapped = kRecords;
    std::swap(swapped[0], swapped[1]);
    EXPECT_NE(headOf(swapped), headOf(kRecords));
}

// Whoever anchors the head outside with a key of their own signs its text.
TEST(AuditChainTest, TheHeadsTextCanBeAnchored)
{
    std::array<unsigned char, crypto_auth_hmacsha256_KEYBYTES> key{};
    for (std::size_t i = 0; i < key.size(); ++i)
        key[i] = static_cast<unsigned char>(i);
    const QByteArray head = headOf(kRecords);
    std::array<unsigned char, crypto_auth_hmacsha256_BYTES> tag{};
    crypto_auth_hmacsha256(tag.data(), reinterpret_cast<const unsigned char*>(head.constData()),
                           static_cast<unsigned long long>(head.size()), key.data());
    EXPECT_EQ(QByteArray(reinterpret_cast<const char*>(tag.data()), tag.size()).toHex(),
              "737f4db0bfaacd7e8b7d2b2f6b41c5810f3fbcfd2290390927aa4bed0e731c9b");
}

TEST(AuditChainTest, ARecordIsItsFieldsBetweenStrokes)
{
    EXPECT_EQ(recordOf(entry(1, "2026-01-15T14:03:22.000Z", "GRADE", "att-0001", "pass")), kRecords[0]);
    AuditEntry odd = entry(7, "t", "E", "a|b", "one\ntwo\\");
    odd.actor = QStringLiteral("Ünal 中");
    EXPECT_EQ(recordOf(odd), QByteArray("7|t|Ünal 中|E|a\\|b|one\\ntwo\\\\"));
}

TEST(AuditChainTest, NoTwoEntriesReadAlike)
{
    const auto pair = [](const char* object, const char* detail) {
        return recordOf(entry(1, "t", "E", object, detail));
    };
    EXPECT_NE(pair("a|b", "c"), pair("a", "b|c"));
    EXPECT_NE(pair("a\\", "b"), pair("a", "\\b"));
    EXPECT_NE(pair("a\\|b", "c"), pair("a\\", "b|c"));
    EXPECT_NE(pair("a\nb", "c"), pair("a\\nb", "c"));
}

TEST(AuditChainTest, EntriesAreAddedBehindOneAnother)
{
    RecordFolder folder;
    Store& store = folder.store();
    const auto before = chainEnd(store);
    ASSERT_TRUE(before);
    EXPECT_EQ(before->length, 1) << "a fresh log begins with its own making";
    for (int i = 0; i < 3; ++i) {
        ASSERT_TRUE(store.transaction([&] {
            return appendAudit(store, entry(0, "", "E", "o", "d"), momentAt(1, i).at).map([](const auto&) {
                return true;
            });
        }));
    }
    EXPECT_EQ(chainEnd(store)->length, 4);
    const auto rows = store.rows({QStringLiteral("SELECT seq, at, hash FROM audit ORDER BY seq")});
    ASSERT_EQ(rows->size(), 4U);
    EXPECT_EQ((*rows)[3][1].toString(), QStringLiteral("2026-11-02T10:00:02.000Z"));
    const QByteArray record = "4|2026-11-02T10:00:02.000Z|instr-07|E|o|d";
    EXPECT_EQ((*rows)[3][2].toByteArray(), chained((*rows)[2][2].toByteArray(), record));
}

TEST(AuditChainTest, WhatIsUndoneLeavesNoEntry)
{
    RecordFolder folder;
    Store& store = folder.store();
    const auto before = chainEnd(store);
    EXPECT_FALSE(store.transaction([&]() -> Result<bool> {
        EXPECT_TRUE(appendAudit(store, entry(0, "", "E", "o", "d"), momentAt(0).at));
        return fault(Problem::CheckOffOutOfOrder);
    }));
    EXPECT_EQ(chainEnd(store), before);
}

}  // namespace fb::test::audit_chain_tests
