#include "core/session/counted_time.h"

namespace fb {

void CountedTime::run(Ms now)
{
    if (m_last)
        look(now);
    m_last = now;
}

void CountedTime::look(Ms now)
{
    if (!m_last)
        return;
    const Ms gap = now - *m_last;
    m_last = now;
    if (gap > Ms{0} && gap <= kLongestGap)
        m_used += gap;
}

void CountedTime::hold(Ms now)
{
    look(now);
    m_last.reset();
}

}  // namespace fb
