#include "app/shell/services.h"

#include <QApplication>

#include "app/look/icons.h"
#include "app/shell/main_window.h"
#include "app/store/profile_store.h"
#include "app/store/store_file.h"

namespace fb {

Services::Services(Settings& settings, Dialogs& dialogs, Seeds& seeds, ProfileKeeper& profiles)
    : m_settings(settings),
      m_learner(std::make_unique<Learner>(profiles)),
      m_practice(std::make_unique<PracticePresenter>(seeds)),
      m_window(std::make_unique<MainWindow>(
          MainWindow::Doors{*m_practice, *m_learner, settings, dialogs, m_language}))
{
    connect(m_learner.get(), &Learner::loaded, this, &Services::openPractice);
    connect(m_learner.get(), &Learner::changed, m_practice.get(),
            [this] { m_practice->setHand(m_learner->withHand({})); });
    connect(m_learner.get(), &Learner::failed, m_practice.get(), &PracticePresenter::tell);
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
    setup.byHand = preferences.byHand;
    setup.mix = preferences.mix;
    m_practice->setUp(setup, preferences.own);
    m_learner->load(preferences.own.handLength);
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
                m_shipped = Shipped{library, lab};
                openPractice();
            },
            Qt::QueuedConnection);
    });
}

void Services::openPractice()
{
    if (!m_shipped || !m_learner->isLoaded())
        return;
    m_practice->setHand(m_learner->withHand({}));
    if (m_shipped->library)
        m_practice->useLibrary(*m_shipped->library, m_shipped->lab);
    else
        m_practice->tell(m_shipped->library.error());
    // What a lab's policy is told of stays; the dialog of the hand says this one again.
    if (m_learner->trouble() && !m_practice->state().notice)
        m_practice->tell(*m_learner->trouble());
}

int runWindow(int argc, char** argv)
{
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("Fingerbreadth"));
    QApplication::setApplicationVersion(QStringLiteral(FINGERBREADTH_VERSION));
    StoredSettings settings;
    SystemDialogs dialogs;
    SystemSeeds seeds;
    ProfileStore profiles(usualStoreFile());
    Services services(settings, dialogs, seeds, profiles);
    services.window().show();
    return QApplication::exec();
}

}  // namespace fb
