#include "app/shell/services.h"

#include <QApplication>

#include "app/look/icons.h"
#include "app/shell/main_window.h"
#include "app/store/profile_store.h"
#include "app/store/record_store.h"
#include "app/store/store_file.h"

namespace fb {

Services::Services(const Doors& doors)
    : m_settings(doors.settings),
      m_learner(std::make_unique<Learner>(doors.profiles)),
      m_practice(std::make_unique<PracticePresenter>(doors.seeds)),
      m_checkOff(std::make_unique<CheckOffPresenter>(doors.records, doors.clock, doors.seeds)),
      m_bodies(std::make_unique<BodyWorker>()),
      m_lecture(std::make_unique<LecturePresenter>(*m_bodies, doors.clock)),
      m_records(std::make_unique<RecordsPresenter>(doors.records, doors.clock)),
      m_window(std::make_unique<MainWindow>(MainWindow::Doors{*m_practice, *m_learner, *m_checkOff,
                                                              *m_lecture, *m_records, doors.screens,
                                                              doors.settings, doors.dialogs, m_language}))
{
    connect(m_learner.get(), &Learner::loaded, this, &Services::openPractice);
    connect(m_learner.get(), &Learner::changed, m_practice.get(),
            [this] { m_practice->setHand(m_learner->withHand({})); });
    connect(m_practice.get(), &PracticePresenter::changed, this, &Services::usePolicy);
    connect(m_checkOff.get(), &CheckOffPresenter::kept, m_records.get(), &RecordsPresenter::reread);
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

void Services::usePolicy()
{
    const Policy* policy = m_practice->labPolicy();
    const QString& file = m_practice->state().policyFile;
    if (!policy || !m_shipped || !m_shipped->library || m_policyFile == file)
        return;
    const bool first = !m_policyFile;
    m_policyFile = file;
    m_checkOff->useLibrary(*m_shipped->library, *policy, QString::fromStdString(textOf(*policy)));
    m_lecture->useLibrary(*m_shipped->library, *policy);
    m_records->useLibrary(*m_shipped->library, (*m_shipped->library)->defaultPolicy());
    // A check-off that a crash cut off is found here.
    if (first)
        m_checkOff->openDesk();
}

int runWindow(int argc, char** argv)
{
    QApplication application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("Fingerbreadth"));
    QApplication::setApplicationVersion(QStringLiteral(FINGERBREADTH_VERSION));
    StoredSettings settings;
    SystemDialogs dialogs;
    SystemSeeds seeds;
    SystemClock clock;
    ProfileStore profiles(usualStoreFile());
    RecordStore records(usualRecordsFile(), clock);
    SystemScreens screens;
    Services services({settings, dialogs, seeds, clock, profiles, records, screens});
    services.window().show();
    return QApplication::exec();
}

}  // namespace fb
