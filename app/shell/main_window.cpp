#include "app/shell/main_window.h"

#include <QApplication>
#include <QEvent>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QScreen>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include "app/checkoff/check_off_page.h"
#include "app/demonstrate/speaker_page.h"
#include "app/look/style.h"
#include "app/practice/parts.h"
#include "app/practice/practice_page.h"
#include "app/practice/run_dialog.h"
#include "app/practice/run_strip.h"
#include "app/records/records_page.h"
#include "app/words/site_words.h"

namespace fb {

MainWindow::MainWindow(const Doors& doors) : m_doors(doors), m_preferences(doors.settings.load())
{
    QPalette paper;
    paper.setColor(QPalette::Window, schemeOf(m_preferences.palette).window);
    setPalette(paper);
    setWindowTitle(QStringLiteral("Fingerbreadth"));
    constexpr QSize kFirstSize{1280, 800};
    resize(kFirstSize);
}

void MainWindow::furnish()
{
    // Look and language stand before the first widget is made, so that each is dressed only once.
    m_doors.language.use(m_preferences.language);
    setPalette({});
    applyStyle(*qApp, schemeOf(m_preferences.palette), textScaleFor(m_preferences.textPercent));
    m_stack = new QStackedWidget(this);
    m_page = new PracticePage(m_doors.practice, m_stack);
    m_stack->addWidget(m_page);
    m_areas = new AreaBar(this);
    m_run = new RunStrip(this);
    m_wordmark = parts::text(this, "wordmark", "title");
    m_caution = parts::text(this, "caution", "caution");
    m_view = menuButton("viewMenu", &MainWindow::fillView);
    m_policy = menuButton("policyMenu", &MainWindow::fillPolicy);
    m_help = menuButton("helpMenu", &MainWindow::fillHelp);
    layOut();
    connectAll();
    m_page->setScheme(schemeOf(m_preferences.palette));
    say();
    m_run->showState(m_doors.practice.state());
    fitHeader();
}

void MainWindow::layOut()
{
    m_wordmark->setWordWrap(false);
    m_caution->setAlignment(Qt::AlignCenter);
    auto* whole = new QWidget(this);
    auto* rows = new QVBoxLayout(whole);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    rows->addWidget(header());
    rows->addWidget(parts::rule(whole));
    rows->addWidget(m_stack, 1);
    rows->addWidget(parts::rule(whole));
    rows->addWidget(m_caution);
    m_caution->setContentsMargins(space::kMargin, space::kTight, space::kMargin, space::kTight);
    setCentralWidget(whole);
}

void MainWindow::connectAll()
{
    PracticePresenter* practice = &m_doors.practice;
    connect(m_run, &RunStrip::replayAsked, practice, &PracticePresenter::replaySeed);
    connect(m_run, &RunStrip::newRunAsked, m_page, &PracticePage::askNewRun);
    connect(practice, &PracticePresenter::changed, this,
            [this] { m_run->showState(m_doors.practice.state()); });
    connect(m_areas, &AreaBar::areaAsked, this, &MainWindow::openArea);
    connect(&m_doors.checkOff, &CheckOffPresenter::changed, this, &MainWindow::followCheckOff);
    connect(m_page, &PracticePage::handAsked, this, &MainWindow::showHand);
    connect(practice, &PracticePresenter::changed, this, &MainWindow::keepSetup);
    connect(practice, &PracticePresenter::changed, this, &MainWindow::askRestart);
    connect(new QShortcut(QKeySequence::New, this), &QShortcut::activated, this, [this] {
        if (m_area == Area::Practice)
            m_page->askNewRun();
    });
    connect(new QShortcut(QKeySequence::Quit, this), &QShortcut::activated, this, &QWidget::close);
}

QWidget* MainWindow::header()
{
    auto* whole = new QWidget(this);
    m_header = whole;
    // However long its words, it never makes the window grow: fitHeader() finds them room.
    m_header->setMinimumWidth(1);
    auto* row = new QHBoxLayout(whole);
    row->setContentsMargins(space::kMargin, space::kNear, space::kMargin, space::kNear);
    row->setSpacing(space::kTight);
    row->addWidget(m_wordmark);
    m_gap = new QWidget(whole);
    m_gap->setFixedWidth(space::kMargin);
    row->addWidget(m_gap);
    row->addWidget(m_areas);
    row->addStretch(1);
    row->addWidget(m_run);
    row->addSpacing(space::kApart);
    for (QPushButton* menu : {m_view, m_policy, m_help})
        row->addWidget(menu);
    return whole;
}

void MainWindow::fitHeader()
{
    if (!m_header)
        return;
    const auto fits = [this] {
        // What changed its words a moment ago has not told the header yet.
        for (QWidget* part : std::initializer_list<QWidget*>{m_areas, m_run}) {
            part->layout()->invalidate();
            part->updateGeometry();
        }
        return m_header->sizeHint().width() <= width();
    };
    const auto narrow = [this](bool isNarrow) {
        const int side = isNarrow ? space::kNear : space::kMargin;
        m_header->layout()->setContentsMargins(side, space::kNear, side, space::kNear);
        m_gap->setVisible(!isNarrow);
    };
    narrow(false);
    m_wordmark->show();
    m_run->setTight(false);
    m_run->setReplayShown(true);
    if (fits())
        return;
    narrow(true);
    if (fits())
        return;
    m_wordmark->hide();
    if (fits())
        return;
    m_run->setTight(true);
    if (!fits())
        m_run->setReplayShown(false);
}

QPushButton* MainWindow::menuButton(const char* name, void (MainWindow::*fill)(QMenu&))
{
    QPushButton* button = parts::button(this, name);
    button->setProperty("look", QLatin1String("quiet"));
    connect(button, &QPushButton::clicked, this, [this, button, fill] {
        auto* menu = new QMenu(button);
        menu->setObjectName(button->objectName() + QStringLiteral(".menu"));
        menu->setAttribute(Qt::WA_DeleteOnClose);
        (this->*fill)(*menu);
        const QPoint below = isRightToLeft()
                                 ? QPoint(button->width() - menu->sizeHint().width(), button->height())
                                 : QPoint(0, button->height());
        menu->popup(button->mapToGlobal(below));
    });
    return button;
}

double MainWindow::textScaleFor(int percent) const
{
    constexpr double kPercent = 100.0;
    if (percent > 0)
        return percent / kPercent;
    // A tall screen without scaling of its own would show letters too small to read.
    constexpr int kTall = 1300;
    constexpr int kVeryTall = 1900;
    constexpr double kLarger = 1.5;
    constexpr double kLargest = 2.0;
    const int tall = screen()->availableGeometry().height();
    return tall >= kVeryTall ? kLargest : tall >= kTall ? kLarger : 1.0;
}

void MainWindow::applyLook()
{
    const Scheme scheme = schemeOf(m_preferences.palette);
    applyStyle(*qApp, scheme, textScaleFor(m_preferences.textPercent));
    m_page->setScheme(scheme);
    if (m_checkOff)
        m_checkOff->setScheme(scheme);
    if (m_speaker)
        m_speaker->setScheme(scheme);
    if (m_records)
        m_records->setScheme(scheme);
}

void MainWindow::say()
{
    setWindowTitle(tr("Fingerbreadth"));
    m_wordmark->setText(tr("Fingerbreadth"));
    m_caution->setText(cautionSentence());
    parts::say(m_view, tr("View"));
    //: The lab's own clinical numbers.
    parts::say(m_policy, tr("Policy"));
    parts::say(m_help, tr("Help"));
}

void MainWindow::change(const Preferences& preferences)
{
    if (preferences == m_preferences)
        return;
    const Preferences before = m_preferences;
    m_preferences = preferences;
    m_doors.settings.save(preferences);
    if (before.language != preferences.language)
        m_doors.language.use(preferences.language);
    if (before.palette != preferences.palette || before.textPercent != preferences.textPercent)
        applyLook();
}

void MainWindow::keepSetup()
{
    const PracticeState& state = m_doors.practice.state();
    if (!state.ready)
        return;
    Preferences preferences = m_preferences;
    preferences.runLength = state.setup.length;
    preferences.help = state.setup.help;
    preferences.asksSide = state.setup.asksSide;
    preferences.byHand = state.setup.byHand;
    preferences.mix = state.setup.mix;
    preferences.own = state.own;
    preferences.policyFile = state.policyFile;
    change(preferences);
    keepHand();
}

void MainWindow::keepHand()
{
    const Cm usual{m_doors.practice.labPolicy()->value(PolicyKey::HandLength)};
    const Cm used = m_doors.practice.state().own.handLength.value_or(usual);
    Profile profile = m_doors.learner.profile();
    if (used == profile.handLength.value_or(usual))
        return;
    profile.handLength = used;
    m_doors.learner.use(profile);
}

void MainWindow::paintEvent(QPaintEvent* event)
{
    QMainWindow::paintEvent(event);
    if (m_painted)
        return;
    m_painted = true;
    QTimer::singleShot(0, this, &MainWindow::firstPainted);
}

void MainWindow::resizeEvent(QResizeEvent* event)
{
    QMainWindow::resizeEvent(event);
    fitHeader();
}

void MainWindow::changeEvent(QEvent* event)
{
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::LanguageChange && m_help)
        say();
    // The parts of the header learn of it after the window.
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange)
        QTimer::singleShot(0, this, &MainWindow::fitHeader);
}

}  // namespace fb
