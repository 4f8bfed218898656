// PINs: a convenience lock beside the operating system's accounts, no protection for the file itself.
//
// Kept as Argon2id hashes (libsodium; m = 19456 KiB, t = 2, p = 1: OWASP Password Storage Cheat Sheet, 2026).
// Hashing takes tens of milliseconds: never on the window's thread.
#pragma once

#include <QString>

#include "core/basics/problem.h"

namespace fb {

inline constexpr int kLeastPinLength = 6;  // NIST SP 800-63B-4, activation secrets

// PinTooShort, PinTooCommon (one of the most used, one digit repeated, a run up or down).
[[nodiscard]] Result<bool> checkedPin(const QString& pin);
// With a salt of its own; StoreNotWritable where there is not memory enough.
[[nodiscard]] Result<QString> pinHash(const QString& pin);
[[nodiscard]] bool pinMatches(const QString& hash, const QString& pin);

// How long to wait after so many wrong PINs in a row, s: none after the first two, then 1, doubling, at most
// 3600 (OWASP, exponential lockout; the border is the lab's choice).
[[nodiscard]] int pinDelay(int wrongInARow);

}  // namespace fb
