#include "app/canvas/plate_voice.h"

namespace fb {

PlateVoice::PlateVoice(QObject* parent) : QObject(parent)
{
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, this, &PlateVoice::sayNewest);
}

void PlateVoice::hear(const QString& words)
{
    m_newest = words;
    if (!m_rest.isActive())
        sayNewest();
}

void PlateVoice::forget() { m_said.clear(); }

void PlateVoice::sayNewest()
{
    if (m_newest.isEmpty() || m_newest == m_said)
        return;
    m_said = m_newest;
    m_rest.start();
    Q_EMIT said(m_said);
}

}  // namespace fb
