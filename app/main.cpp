// Fingerbreadth: the window, or the command line when there is a command to do.
#include <QtGlobal>

#include "app/cli/cli.h"
#include "app/shell/services.h"

namespace fb::main_detail {

// Where Qt would look for a screen; the offscreen platform needs none.
bool hasDisplay()
{
#if defined(Q_OS_UNIX) && !defined(Q_OS_MACOS)
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
#else
    return true;
#endif
}

}  // namespace fb::main_detail

int main(int argc, char** argv)
{
    if (argc > 1)
        return fb::runCommandLine(argc, argv);
    if (!fb::main_detail::hasDisplay())
        return fb::runWithoutDisplay();
    return fb::runWindow(argc, argv);
}
