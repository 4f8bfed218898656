// A signed check-off of an invented student as the records would hand it over, made by running one: so that
// its events follow on each other.
#pragma once

#include <functional>

#include "app/doors/records.h"
#include "tests/support/shipped.h"

namespace fb::test {

struct SignedSample {
    Student student{QStringLiteral("S-1042"),
                    QStringLiteral("Okonkwo-Lindqvist"),
                    QStringLiteral("Marguerite"),
                    QStringLiteral("B"),
                    0,
                    {},
                    true};
    Sheet sheet;
    std::vector<Point> off;  // of each mark from the ideal point, (to the front, down the limb), cm of skin
    std::vector<Observation> seen;
    std::optional<double> held;
    int rating = 3;
    QString remark;
    int late = -1;                                                   // this item is not answered
    int refused = -1;                                                // this one is refused for a rash
    std::function<Result<CheckOffEvent>(const CheckOff&, Ms)> ends;  // before the manikin: a void, a stop
    QString second;
};

[[nodiscard]] inline Answer sampleAnswer(const SignedSample& sample, const SetRequest& asked, int item)
{
    const Library& library = shippedLibrary();
    const Policy& policy = library.defaultPolicy();
    const Request& request = asked.request;
    const Convention convention = policy.convention(request.site);
    if (item == sample.late)
        return unanswered(item, request, convention);
    if (item == sample.refused)
        return answerOf(item, refusedAttempt(policy, request, FindingCode::Rash, 1.0), convention, policy);
    const Atlas atlas = library.atlas(request.view).value();
    const Target target = locate(atlas, policy, request.patient, convention, request.view).value();
    const Point off =
        sample.off.empty() ? Point{} : sample.off[static_cast<std::size_t>(item) % sample.off.size()];
    const Point mark = target.toViewer(target.idealSkin + Point{off.x, -off.y});
    const BodyMap map = bodyMap(atlas, request.view, request.patient).value();
    const MarkedLimb limb = markedLimb(atlas.plate(request.view), map, request.patient.side(), mark).value();
    return answerOf(item, markedAttempt(target, policy, request, mark, limb), convention, policy);
}

class SignedRun {
public:
    explicit SignedRun(const SignedSample& sample) : m_run({sample.sheet, kSeed, sample.student.extraPercent})
    {
        keep(m_run.confirm(now()));
        keep(m_run.start(now()));
        const std::vector<SetRequest> asked = m_run.requests();
        for (int i = 0; i < static_cast<int>(asked.size()); ++i)
            answer(sampleAnswer(sample, asked[static_cast<std::size_t>(i)], i));
        if (sample.ends)
            keep(sample.ends(m_run, now()));
        else if (!sample.sheet.steps.empty())
            onManikin(sample);
        if (sample.rating > 0)
            keep(m_run.rate(sample.rating, sample.remark.toStdString(), now()));
        keep(m_run.sign(now()));
    }

    [[nodiscard]] CheckOffOnFile onFile(const SignedSample& sample) const
    {
        CheckOffOnFile file;
        file.line.id = 1;
        file.line.student = sample.student;
        file.line.attempt = 2;
        file.line.at = QDateTime(QDate(2026, 11, 29), QTime(14, 5), Qt::UTC);
        file.begunAt = QDateTime(QDate(2026, 11, 29), QTime(13, 41), Qt::UTC);
        file.line.outcome = m_run.result().decision.outcome;
        file.line.rating = sample.rating;
        file.line.assessor = QStringLiteral("Ines Valdemar");
        file.line.secondAssessor = sample.second;
        file.sheet.sheet = sample.sheet;
        file.order.seed = kSeed;
        file.order.extraPercent = sample.student.extraPercent;
        file.order.policyText = QStringLiteral("{}");
        file.order.programVersion = QStringLiteral("0.1.0");
        file.events = m_events;
        file.chainHead = QStringLiteral("5f0c1db2a97e44aa0b1c22d3e4f5061728394a5b6c7d8e9f00112233445566ff");
        file.chainLength = 1234;
        return file;
    }

private:
    static constexpr std::uint64_t kSeed = 7;

    // A second later each time.
    [[nodiscard]] Ms now() { return m_now += Ms{1000}; }

    void keep(const Result<CheckOffEvent>& event)
    {
        m_run.look(m_now);
        m_events.push_back(event.value());
        (void)m_run.apply(event.value(), m_now).value();
    }

    // No item is left unanswered before its time is up.
    void answer(const Answer& given)
    {
        while (given.timeUp && !m_run.isTimeUp())
            m_run.look(now());
        keep(m_run.answer(given, now()));
    }

    void onManikin(const SignedSample& sample)
    {
        keep(m_run.takeOver(now()));
        for (const Observation& seen : sample.seen) {
            while (m_run.onManikin() < Ms{static_cast<std::int64_t>(seen.at * 1000.0)})
                m_run.look(now());
            auto event = m_run.observe(seen.step, seen.seen, seen.remark, now());
            event.value().observation->at = seen.at;
            keep(event);
        }
        for (const SheetStep& step : sample.sheet.steps)
            if (!m_run.seen(step.step))
                keep(m_run.observe(step.step, Seen::NotDone, {}, now()));
        if (sample.held)
            keep(m_run.hold(*sample.held, now()));
        keep(m_run.finish(now()));
    }

    Ms m_now{0};
    CheckOff m_run;
    std::vector<CheckOffEvent> m_events;
};

[[nodiscard]] inline CheckOffOnFile signedCheckOff(const SignedSample& sample)
{
    return SignedRun(sample).onFile(sample);
}

}  // namespace fb::test
