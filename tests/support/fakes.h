// Doors that answer as a test tells them to.
#pragma once

#include <cstdint>
#include <optional>

#include "app/doors/dialogs.h"
#include "app/doors/profile.h"
#include "app/doors/seeds.h"
#include "app/doors/settings.h"

namespace fb::test {

class MemorySettings : public Settings {
public:
    [[nodiscard]] Preferences load() const override { return stored; }
    void save(const Preferences& preferences) override
    {
        stored = preferences;
        ++saves;
    }

    Preferences stored;
    int saves = 0;
};

// Answers at once; with trouble it keeps nothing, as a store that cannot be written.
class MemoryProfiles : public ProfileKeeper {
public:
    void load(QObject*, std::function<void(const Remembered&)> then) override { then(stored); }
    void save(const Profile& profile, QObject*, Saved then) override
    {
        if (!stored.trouble)
            stored.profile = profile;
        ++saves;
        then(answer());
    }
    void saveScale(const QString& screen, PixelsPerMm scale, QObject*, Saved then) override
    {
        if (!stored.trouble)
            stored.scales[screen] = scale;
        then(answer());
    }

    Remembered stored;
    int saves = 0;

private:
    [[nodiscard]] Result<bool> answer() const
    {
        return stored.trouble ? Result<bool>(tl::unexpected(*stored.trouble)) : Result<bool>(true);
    }
};

class AnsweringDialogs : public Dialogs {
public:
    [[nodiscard]] QString askPolicyFile(QWidget*) override { return answered(); }
    [[nodiscard]] QString askRosterFile(QWidget*) override { return answered(); }
    [[nodiscard]] QString askSheetFile(QWidget*) override { return answered(); }
    [[nodiscard]] QString askMarksFile(QWidget*) override { return answered(); }
    [[nodiscard]] QString askSaveFile(QWidget*, const QString& suggestedName, SaveKind kind) override
    {
        suggested = suggestedName;
        asKind = kind;
        return answered();
    }
    [[nodiscard]] QString askBackupFile(QWidget*, const QString& folder) override
    {
        backupFolder = folder;
        return answered();
    }

    QString answer;
    int asked = 0;
    // Of the last file to save.
    QString suggested;
    std::optional<SaveKind> asKind;
    QString backupFolder;  // in which one was looked for

private:
    QString answered()
    {
        ++asked;
        return answer;
    }
};

// 7, 8, 9, ...
class CountingSeeds : public Seeds {
public:
    explicit CountingSeeds(std::uint64_t first = 7) : m_next(first) {}
    [[nodiscard]] std::uint64_t fresh() override { return m_next++; }

private:
    std::uint64_t m_next;
};

}  // namespace fb::test
