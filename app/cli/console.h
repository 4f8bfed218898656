// What the program without a window shares: its two outputs and a paint engine that needs no
// display.
#pragma once

#include <QGuiApplication>
#include <QString>
#include <string>

namespace fb {

inline constexpr int kExitGood = 0;
inline constexpr int kExitBad = 2;

// UTF-8 to standard output, through to the device; false when it does not take all of it.
[[nodiscard]] bool toOutput(const std::string& utf8);
// One line to standard error.
void toErrors(const QString& sentence);

// A QGuiApplication that asks for no display and keeps its remarks to itself. One at a time, as every
// QGuiApplication.
class OffscreenApplication {
public:
    explicit OffscreenApplication(char** argv);

private:
    int m_argc = 1;  // Qt keeps a reference; the program's own words are not Qt's
    QGuiApplication m_application;
};

}  // namespace fb
