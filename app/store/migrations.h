// The steps that bring a store of any age to the tables of today, in order. Each runs in a
// transaction of its own; a store's version is the number of steps it has behind it.
//
// A step that has been released is never changed. The words are those both SQLite and PostgreSQL
// understand, but for the triggers, which each of them writes its own way.
#pragma once

#include <QString>
#include <span>
#include <vector>

namespace fb {

struct Migration {
    std::vector<QString> statements;
    std::vector<QString> forSqlite{};  // after them
};

[[nodiscard]] std::span<const Migration> migrations();

}  // namespace fb
