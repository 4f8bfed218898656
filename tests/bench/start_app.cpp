// The program's own window, opened as the program opens it, that tells when it is first painted
// and when the plate is drawn, and closes. The side is not asked first, so that a plate shows.
#include <QApplication>
#include <QTimer>

#include "app/canvas/plate_view.h"
#include "app/shell/main_window.h"
#include "app/shell/services.h"
#include "tests/bench/start_clock.h"

namespace fb::bench {

class PlainSettings : public Settings {
public:
    [[nodiscard]] Preferences load() const override
    {
        Preferences preferences;
        preferences.asksSide = false;
        return preferences;
    }
    void save(const Preferences&) override {}
};

class NoDialogs : public Dialogs {
public:
    [[nodiscard]] QString askPolicyFile(QWidget*) override { return {}; }
};

}  // namespace fb::bench

int main(int argc, char** argv)
{
    using namespace fb::bench;
    QApplication application(argc, argv);
    PlainSettings settings;
    NoDialogs dialogs;
    fb::SystemSeeds seeds;
    fb::Services services(settings, dialogs, seeds);
    auto* plate = services.window().findChild<fb::PlateView*>(QStringLiteral("plate"));
    if (plate == nullptr)
        return 1;
    QObject::connect(&services.window(), &fb::MainWindow::firstPainted, [] { tellTime("first"); });
    QObject::connect(plate, &fb::PlateView::sharpened, plate, [&services, told = false]() mutable {
        if (told)
            return;
        told = true;
        tellTime("plate");
        QTimer::singleShot(0, &services.window(), &QWidget::close);
    });
    services.window().show();
    return QApplication::exec();
}
