// Records of an invented lab kept in memory, with check-offs that were really graded on the shipped plates;
// and the page of the records before a window of its own.
#pragma once

#include <QTest>
#include <QVBoxLayout>

#include "app/look/style.h"
#include "app/records/records_page.h"
#include "app/doors/plate_hashes.h"
#include "tests/support/fakes.h"
#include "tests/support/memory_records.h"

namespace fb::test {

inline constexpr const char* kPin = "482716";

[[nodiscard]] inline std::shared_ptr<const Library> sharedLibrary()
{
    static const std::shared_ptr<const Library> library = Library::load().value();
    return library;
}

// One mark on each site, two steps of which one is critical.
[[nodiscard]] inline Sheet sampleSheet()
{
    Sheet sheet;
    sheet.title = "Finding the site";
    sheet.invented = true;
    sheet.secondsPerItem = 60;
    sheet.items = {{Site::Deltoid, Side::Left, View::ShoulderSide},
                   {Site::Ventrogluteal, Side::Right, View::HipSide},
                   {Site::VastusLateralis, Side::Left, View::ThighSide}};
    sheet.steps = {{ProcedureStep::HandHygiene, false},
                   {ProcedureStep::Identify, true},
                   {ProcedureStep::Insert, false},
                   {ProcedureStep::Document, false}};
    return sheet;
}

[[nodiscard]] inline Result<Target> targetOf(const Request& request, const Policy& policy)
{
    const Atlas atlas = sharedLibrary()->atlas(request.view).value();
    return locate(atlas, policy, request.patient, policy.convention(request.site), request.view);
}

// Marked so far from the ideal point, viewer's frame, cm.
[[nodiscard]] inline Answer answered(int item, const Request& request, Point off)
{
    const Policy& policy = sharedLibrary()->defaultPolicy();
    const Atlas atlas = sharedLibrary()->atlas(request.view).value();
    const Target target = targetOf(request, policy).value();
    const Point mark{target.ideal.x + off.x, target.ideal.y + off.y};
    const auto map = bodyMap(atlas, request.view, request.patient).value();
    const auto limb = markedLimb(atlas.plate(request.view), map, request.patient.side(), mark).value();
    return answerOf(item, markedAttempt(target, policy, request, mark, limb), target.convention, policy);
}

class SampleRecords : public MemoryRecords {
public:
    explicit SampleRecords(int count = 4)
    {
        people = {{{1, QStringLiteral("Ada Brook")}, QString::fromLatin1(kPin)},
                  {{2, QStringLiteral("Ines Castro")}, QStringLiteral("551903")}};
        addSheet(sampleSheet());
        static constexpr std::array kFamilies{"Marlow", "Abbot", "Young", "Devlin"};
        static constexpr std::array kGiven{"Rosa", "Theo", "Lin", "Sam"};
        for (int i = 0; i < count; ++i) {
            Student student;
            student.id = QStringLiteral("S%1").arg(1000 + i);
            student.family = QString::fromLatin1(kFamilies[static_cast<std::size_t>(i) % 4]);
            if (i >= 4)
                student.family += QString::number(i);
            student.given = QString::fromLatin1(kGiven[static_cast<std::size_t>(i) % 4]);
            student.section = i % 2 == 0 ? QStringLiteral("Monday") : QStringLiteral("Friday");
            student.invented = true;
            students.push_back(student);
        }
    }

    QString addSheet(const Sheet& sheet)
    {
        const QByteArray text = QByteArray::fromStdString(textOf(sheet));
        current = QString::fromLatin1(QCryptographicHash::hash(text, QCryptographicHash::Sha256).toHex());
        sheets.push_back({current, sheet});
        return current;
    }

    // A check-off of that student, every item marked so far off and both steps as given; signed now.
    qint64 signedOne(int student, Point off, Seen critical = Seen::Done)
    {
        MemoryEntry entry = begun(student);
        const CheckOffSetup setup{entry.open.sheet.sheet, entry.open.order.seed, 0};
        CheckOff run(setup);
        Ms now{0};
        const auto take = [&](const Result<CheckOffEvent>& event) {
            entry.open.events.push_back(event.value());
            (void)run.apply(event.value(), now).value();
            now += Ms{1500};
            run.look(now);
        };
        take(run.confirm(now));
        take(run.start(now));
        for (std::size_t i = 0; i < run.requests().size(); ++i)
            take(run.answer(answered(static_cast<int>(i), run.requests()[i].request, off), now));
        take(run.takeOver(now));
        take(run.observe(ProcedureStep::HandHygiene, Seen::Prompted, "asked for it", now));
        take(run.observe(ProcedureStep::Document, Seen::Done, {}, now));
        take(run.observe(ProcedureStep::Identify, critical, {}, now));
        take(run.observe(ProcedureStep::Insert, Seen::Done, {}, now));
        take(run.hold(9.5, now));
        take(run.finish(now));
        take(run.rate(3, "Calm and careful.", now));
        take(run.sign(now));
        return keepSigned(entry, run.result());
    }

    // The same student's answer of the item changed behind the program's back.
    Answer& answerOfItem(qint64 checkOff, int item)
    {
        for (CheckOffEvent& event : kept.at(checkOff).open.events) {
            if (event.answer && event.answer->item == item)
                return *event.answer;
        }
        std::abort();
    }

    // The same where the time of the item ran out.
    void leaveUnanswered(qint64 checkOff, int item)
    {
        Answer& answer = answerOfItem(checkOff, item);
        answer = unanswered(item, answer.request, answer.convention);
        bool later = false;
        for (CheckOffEvent& event : kept.at(checkOff).open.events) {
            later = later || (event.answer && event.answer->item == item);
            if (later)
                event.onScreen += Ms{60000};
        }
    }

private:
    [[nodiscard]] MemoryEntry begun(int student)
    {
        MemoryEntry entry;
        entry.open.id = static_cast<qint64>(kept.size()) + 1;
        entry.open.student = students[static_cast<std::size_t>(student)];
        entry.open.sheet = sheets.back();
        entry.open.order.student = entry.open.student.id;
        entry.open.order.sheet = current;
        entry.open.order.seed = 7;
        entry.open.order.policyText = QStringLiteral("{}");
        for (const View view : {View::ShoulderSide, View::HipSide, View::ThighSide, View::ThighFront}) {
            const std::string_view word = wordOf(view);
            entry.open.order.plateHashes +=
                QString::fromLatin1(word.data(), qsizetype(word.size())) + u'=' + plateHash(view) + u' ';
        }
        for (const auto& [id, before] : kept)
            entry.open.attempt += before.open.student.id == entry.open.student.id ? 1 : 0;
        return entry;
    }
    qint64 keepSigned(MemoryEntry entry, const CheckOffResult& result)
    {
        entry.at = clock.wall();
        entry.signedOff = SignedOff{entry.open.id,
                                    result,
                                    entry.at,
                                    QStringLiteral("31eeae30572c14b1dd7e221d391ba36e"),
                                    7,
                                    {people.front().assessor}};
        const qint64 id = entry.open.id;
        kept[id] = std::move(entry);
        return id;
    }
};

// The page in a window, opened and settled; locked unless a test opens it.
class RecordsWindow {
public:
    explicit RecordsWindow(SampleRecords& given, PaletteKind palette = PaletteKind::Light,
                           double textScale = 1.0, QSize size = {1280, 722})
        : records(given),
          presenter(given, given.clock),
          window(dressed(palette, textScale))
    {
        presenter.useLibrary(sharedLibrary(), sharedLibrary()->defaultPolicy());
        page = new RecordsPage(presenter, dialogs, &window);
        page->setScheme(schemeOf(palette));
        auto* whole = new QVBoxLayout(&window);
        whole->setContentsMargins(0, 0, 0, 0);
        whole->addWidget(page);
        window.resize(size);
        window.show();
        isReady = QTest::qWaitForWindowActive(&window);
        rest();
    }

    // By object name; a missing one is null and fails the test that asked.
    template <class Widget = QWidget>
    [[nodiscard]] Widget* find(const char* name)
    {
        return window.findChild<Widget*>(QLatin1String(name));
    }
    [[nodiscard]] const RecordsState& state() const { return presenter.state(); }

    void rest()
    {
        constexpr int kRounds = 6;
        for (int i = 0; i < kRounds; ++i) {
            QCoreApplication::sendPostedEvents();
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
            QCoreApplication::processEvents();
        }
    }
    void click(const char* name)
    {
        auto* widget = find(name);
        ASSERT_NE(widget, nullptr) << name;
        ASSERT_TRUE(widget->isVisible()) << name;
        ASSERT_TRUE(widget->isEnabled()) << name;
        QTest::mouseClick(widget, Qt::LeftButton);
        rest();
    }
    void type(const char* name, const char* words)
    {
        auto* widget = find(name);
        ASSERT_NE(widget, nullptr) << name;
        widget->setFocus();
        QTest::keyClicks(widget, QString::fromUtf8(words));
        rest();
    }
    // Through the gate, as a user does.
    void unlock()
    {
        type("gatePin", kPin);
        QTest::keyClick(find("gatePin"), Qt::Key_Return);
        rest();
    }
    [[nodiscard]] bool replayed()
    {
        constexpr int kLongest = 20000;  // ms; a Debug build reads a plate slowly
        const bool made = QTest::qWaitFor([this] { return state().replay != nullptr; }, kLongest);
        rest();
        return made;
    }
    // Tab until that widget has the focus; false when it is never reached.
    [[nodiscard]] bool tabTo(const char* name)
    {
        constexpr int kMost = 80;
        for (int i = 0; i < kMost; ++i) {
            QWidget* focus = QApplication::focusWidget();
            if (focus && focus->objectName() == QLatin1String(name))
                return true;
            QTest::keyClick(focus ? focus : &window, Qt::Key_Tab);
        }
        return false;
    }

    SampleRecords& records;
    AnsweringDialogs dialogs;
    RecordsPresenter presenter;
    QWidget window;
    RecordsPage* page = nullptr;
    bool isReady = false;

private:
    // The look stands before the first widget is made, as in the program.
    static QWidget* dressed(PaletteKind palette, double textScale)
    {
        applyStyle(*qApp, schemeOf(palette), textScale);
        return nullptr;
    }
};

}  // namespace fb::test
