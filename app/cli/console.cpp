#include "app/cli/console.h"

#include <QByteArray>
#include <cstdio>

namespace fb {

namespace console_detail {

// Standard error belongs to our one sentence, not to remarks about the machine.
void dropRemarks(QtMsgType, const QMessageLogContext&, const QString&) {}

// Before QGuiApplication starts.
int& withoutDisplay(int& argc)
{
    qInstallMessageHandler(&dropRemarks);
    qputenv("QT_QPA_PLATFORM", "offscreen");
    return argc;
}

}  // namespace console_detail

bool toOutput(const std::string& utf8)
{
    const std::size_t written = std::fwrite(utf8.data(), 1, utf8.size(), stdout);
    return std::fflush(stdout) == 0 && written == utf8.size();
}

void toErrors(const QString& sentence)
{
    const QByteArray line = sentence.toUtf8() + '\n';
    std::fwrite(line.constData(), 1, static_cast<std::size_t>(line.size()), stderr);
}

OffscreenApplication::OffscreenApplication(char** argv)
    : m_application(console_detail::withoutDisplay(m_argc), argv)
{
}

}  // namespace fb
