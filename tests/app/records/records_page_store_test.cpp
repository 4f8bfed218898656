// The page of the records on records that really are a file, read in threads of their own: what the other
// tests of the page see in memory.
#include <gtest/gtest.h>

#include <QLabel>
#include <QPushButton>
#include <QTableView>

#include "app/store/record_store.h"
#include "tests/support/record_folder.h"
#include "tests/support/sample_records.h"

namespace fb::test::records_page_store_test {

namespace records_page_store_detail {

constexpr int kSlow = 30000;  // ms: a machine that does other things too

class StoredLab {
public:
    StoredLab()
    {
        (void)got<int>([&](const auto& then) {
            store.saveStudents({inventedStudent(1), inventedStudent(2)}, &asker, then);
        });
        sheet =
            got<SheetOnFile>([&](const auto& then) { store.saveSheet(sampleSheet(), &asker, then); }).value();
        by = got<Proof>([&](const auto& then) {
                 store.enrol(QStringLiteral("Ada Brook"), QString::fromLatin1(kPin), std::nullopt, &asker,
                             then);
             }).value();
    }

    // The second student's, every mark so far off the ideal point; everything done.
    void signOne(Point off)
    {
        CheckOffOrder order = orderOf(QStringLiteral("s-002"), sheet);
        order.policyText = QStringLiteral("{}");
        order.plateHashes = plateHashesOf(requestsOf(sheet.sheet, order.seed));
        const qint64 id =
            got<RunningCheckOff>([&](const auto& then) { store.begin(order, &asker, then); }).value().id;
        CheckOff run({sheet.sheet, order.seed, 0});
        Ms now{0};
        const auto take = [&](const Result<CheckOffEvent>& event) {
            const auto kept =
                got<bool>([&](const auto& then) { store.keep(id, event.value(), &asker, then); });
            EXPECT_TRUE(kept) << wordOf(event->kind);
            (void)run.apply(event.value(), now).value();
            now += Ms{1500};
            run.look(now);
        };
        take(run.confirm(now));
        take(run.start(now));
        for (std::size_t i = 0; i < run.requests().size(); ++i)
            take(run.answer(answered(static_cast<int>(i), run.requests()[i].request, off), now));
        take(run.takeOver(now));
        for (const ProcedureStep step : {ProcedureStep::HandHygiene, ProcedureStep::Identify,
                                         ProcedureStep::Insert, ProcedureStep::Document})
            take(run.observe(step, Seen::Done, {}, now));
        take(run.finish(now));
        take(run.rate(4, "Calm.", now));
        EXPECT_TRUE(got<SignedOff>([&](const auto& then) {
            store.sign(id, run.sign(now).value(), run.result(), by, std::nullopt, &asker, then);
        }));
    }

    RecordFolder folder;
    TestClock clock;
    RecordStore store{folder.file(), clock};
    SheetOnFile sheet;

private:
    template <class T, class Ask>
    Result<T> got(const Ask& ask)
    {
        std::optional<Result<T>> answer;
        ask([&](const Result<T>& result) { answer = result; });
        EXPECT_TRUE(QTest::qWaitFor([&] { return answer.has_value(); }, kSlow));
        return answer.value();
    }

    QObject asker;
    Proof by;
};

// The page on that lab in a window of its own.
struct StoredPage {
    explicit StoredPage(StoredLab& lab) : presenter(lab.store, lab.clock)
    {
        applyStyle(*qApp, schemeOf(PaletteKind::Light), 1.0);
        presenter.useLibrary(sharedLibrary(), sharedLibrary()->defaultPolicy());
        auto* page = new RecordsPage(presenter, dialogs, &window);
        auto* whole = new QVBoxLayout(&window);
        whole->addWidget(page);
        page->setScheme(schemeOf(PaletteKind::Light));
        window.resize(1280, 722);
        window.show();
        isReady = QTest::qWaitForWindowActive(&window);
    }
    template <class Widget>
    [[nodiscard]] Widget* shown(const char* name)
    {
        Widget* found = nullptr;
        EXPECT_TRUE(QTest::qWaitFor(
            [&] {
                found = window.findChild<Widget*>(QLatin1String(name));
                return found && found->isVisible() && found->isEnabled();
            },
            kSlow))
            << name;
        return found;
    }

    AnsweringDialogs dialogs;
    RecordsPresenter presenter;
    QWidget window;
    bool isReady = false;
};

}  // namespace records_page_store_detail

using namespace records_page_store_detail;

TEST(RecordsPageStoreTest, UnlocksOpensARowACheckOffAndAnAnswerOfAFile)
{
    StoredLab lab;
    lab.signOne({0.3, 0.2});
    StoredPage on(lab);
    ASSERT_TRUE(on.isReady);
    auto* pin = on.shown<QWidget>("gatePin");
    ASSERT_NE(pin, nullptr);
    QTest::keyClicks(pin, QString::fromLatin1(kPin));
    QTest::keyClick(pin, Qt::Key_Return);
    auto* table = on.shown<QTableView>("boardTable");
    ASSERT_NE(table, nullptr);
    ASSERT_TRUE(QTest::qWaitFor([&] { return table->model()->rowCount() == 2; }, kSlow));
    EXPECT_EQ(table->model()->index(1, 0).data().toString(), QStringLiteral("Family002, Given"));
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {},
                      table->visualRect(table->model()->index(1, 0)).center());
    auto* open = on.shown<QPushButton>("historyOpen");
    ASSERT_NE(open, nullptr);
    QTest::mouseClick(open, Qt::LeftButton);
    const auto* outcome = on.shown<QLabel>("openedOutcome");
    ASSERT_NE(outcome, nullptr);
    EXPECT_EQ(outcome->text(), QStringLiteral("Passed"));
    EXPECT_EQ(on.shown<QLabel>("openedName")->text(), QStringLiteral("Given Family002"));
    auto* show = on.shown<QPushButton>("openedReplay");
    ASSERT_NE(show, nullptr);
    QTest::mouseClick(show, Qt::LeftButton);
    EXPECT_NE(on.shown<QWidget>("replayPlate"), nullptr);
    EXPECT_TRUE(QTest::qWaitFor([&] { return on.presenter.state().replay != nullptr; }, kSlow));
    EXPECT_FALSE(on.presenter.state().notice.has_value());
}

TEST(RecordsPageStoreTest, AWrongPinOpensNothing)
{
    StoredLab lab;
    StoredPage on(lab);
    ASSERT_TRUE(on.isReady);
    auto* pin = on.shown<QWidget>("gatePin");
    ASSERT_NE(pin, nullptr);
    QTest::keyClicks(pin, QStringLiteral("000111"));
    QTest::keyClick(pin, Qt::Key_Return);
    EXPECT_TRUE(QTest::qWaitFor([&] { return on.presenter.state().notice.has_value(); }, kSlow));
    EXPECT_EQ(on.presenter.state().gate, RecordsGate::Locked);
    EXPECT_EQ(on.window.findChild<QTableView*>("boardTable"), nullptr);
}

}  // namespace fb::test::records_page_store_test
