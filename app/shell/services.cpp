#include "app/shell/services.h"

#include <QApplication>

#include "app/look/icons.h"
#include "app/shell/main_window.h"

namespace fb {

Services::Services(Settings& settings, Dialogs& dialogs, Seeds& seeds)
    : m_settings(settings),
      m_practice(std::make_unique<PracticePresenter>(seeds)),
      m_window(std::make_unique<MainWindow>(MainWindow::Doors{*m_practice, settings, dialogs, m_language}))
{
    // The reader works in its own thread while this one furnishes the window.
    connect(m_window.get(), &MainWindow::firstPainted, this, &Services::load);
    connect(m_window.get(), &MainWindow::firstPainted, m_window.get(), &MainWindow::furnish);
}

Services::~Services()
{
    if (m_loader.joinable())
        m_loader.join();
}

void Services::load()
{
    const Preferences preferences = m_settings.load();
    PracticeSetup setup;
    setup.seed = m_practice->freshSeed().toULongLong();
    setup.length = preferences.runLength;
    setup.help = preferences.help;
    setup.asksSide = preferences.asksSide;
    setup.mix = preferences.mix;
    m_practice->setUp(setup, preferences.own);
    const View first = requestFrom(setup.seed, 0, setup.mix).view;
    m_loader = std::thread([this, first, file = preferences.policyFile] {
        auto library = Library::load();
        std::optional<LabPolicy> lab;
        // Policy file and first plates are read here too, so that the window's thread never has to.
        if (library) {
            if (!file.isEmpty())
                lab = LabPolicy{file, (*library)->policyWith(file)};
            if (const auto atlas = (*library)->atlas(first); !atlas)
                library = tl::unexpected(atlas.error());
        }
        QMetaObject::invokeMethod(
            this,
            [this, library, lab] {
                if (library)
                    m_practice->useLibrary(*library, lab);
                else
                    m_practice->tell(library.error());
            },
            Qt::QueuedConnection);
    });
}

int runWindow(int argc, char** argv)
{
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("Fingerbreadth"));
    QApplication::setApplicationVersion(QStringLiteral(FINGERBREADTH_VERSION));
    StoredSettings settings;
    SystemDialogs dialogs;
    SystemSeeds seeds;
    Services services(settings, dialogs, seeds);
    services.window().show();
    return QApplication::exec();
}

}  // namespace fb
