#include "app/checkoff/score_bar.h"

#include <QPainter>
#include <algorithm>

#include "app/practice/parts.h"

namespace fb {

namespace score_bar_detail {

constexpr int kHeight = 20;
constexpr int kLeastWidth = 120;
constexpr double kTrack = 0.4;  // of the height
constexpr double kWhole = 100.0;

}  // namespace score_bar_detail

ScoreBar::ScoreBar(QWidget* parent) : QWidget(parent)
{
    setObjectName(QStringLiteral("scoreBar"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ScoreBar::showScore(double percent, double cut)
{
    m_percent = std::clamp(percent, 0.0, score_bar_detail::kWhole);
    m_cut = std::clamp(cut, 0.0, score_bar_detail::kWhole);
    update();
}

void ScoreBar::setScheme(const Scheme& scheme)
{
    m_scheme = scheme;
    updateGeometry();
    update();
}

QSize ScoreBar::sizeHint() const
{
    using namespace score_bar_detail;
    return {kLeastWidth, parts::scaled(this, kHeight)};
}

void ScoreBar::paintEvent(QPaintEvent*)
{
    using namespace score_bar_detail;
    QPainter painter(this);
    if (isRightToLeft()) {
        painter.translate(width(), 0);
        painter.scale(-1.0, 1.0);
    }
    const double high = height() * kTrack;
    const QRectF track(0.5, height() - high - 0.5, width() - 1.0, high);
    painter.setPen(m_scheme.quietInk);
    painter.drawRect(track);
    painter.fillRect(QRectF(track.left(), track.top(), track.width() * m_percent / kWhole, high),
                     m_scheme.ink);
    // The cut stands above the track, and is cut out of the filled part.
    const double cut = track.left() + track.width() * m_cut / kWhole;
    painter.fillRect(QRectF(cut - 2.5, track.top() - 1.0, 5.0, high + 2.0), m_scheme.window);
    painter.fillRect(QRectF(cut - 1.0, 0.0, 2.0, height()), m_scheme.ink);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(m_scheme.ink);
    const double wing = height() - high - 4.0;
    const QPointF flag[3]{{cut - wing * 0.6, 0.0}, {cut + wing * 0.6, 0.0}, {cut, wing}};
    painter.drawPolygon(flag, 3);
}

}  // namespace fb
