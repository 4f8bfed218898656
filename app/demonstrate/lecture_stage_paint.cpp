// The picture on screen: painted where it is stale, else shown as it was.
#include <QPainter>
#include <cmath>

#include "app/demonstrate/lecture_stage.h"
#include "app/demonstrate/pool_painting.h"

namespace fb {

void LectureStage::renewSheet()
{
    const LectureFace now = face();
    const LecturePage& composed = page();
    const QSizeF pixels = m_size * m_pixelRatio;
    const QSize size(static_cast<int>(std::ceil(pixels.width())),
                     static_cast<int>(std::ceil(pixels.height())));
    if (m_sheet.size() != size || m_sheet.devicePixelRatio() != m_pixelRatio) {
        m_sheet = QImage(size, QImage::Format_RGB32);
        m_sheet.setDevicePixelRatio(m_pixelRatio);
        m_stale = QRectF(QPointF(), m_size).toAlignedRect();
    }
    if (m_stale.isEmpty() || m_sheet.isNull())
        return;
    paintInPool([&] {
        QPainter painter(&m_sheet);
        painter.setClipRegion(m_stale);
        paintLecture(painter, now, composed);
    });
    m_stale = {};
}

void LectureStage::paint(QPainter& painter)
{
    renewSheet();
    painter.drawImage(QPointF(), m_sheet);
}

}  // namespace fb
