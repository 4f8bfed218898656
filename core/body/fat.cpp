#include "core/body/fat.h"

#include <algorithm>
#include <cmath>

namespace fb {

namespace fat_detail {

double thighFat(const Proportions::ThighFat& row, double index)
{
    return std::max(row.least, row.mm + row.perIndex * (index - row.atIndex));
}

double hipFat(const Proportions::HipFat& row, double index)
{
    const double straightIndex = row.atIndex + std::log(row.straightFrom / row.mm) / row.growth;
    return index <= straightIndex ? row.mm * std::exp(row.growth * (index - row.atIndex))
                                  : row.straightFrom + row.perIndex * (index - straightIndex);
}

}  // namespace fat_detail

Mm fatOver(Site site, const Proportions& proportions, const Patient& patient)
{
    const double index = patient.bodyMassIndex();
    switch (site) {
    case Site::Deltoid: break;
    case Site::VastusLateralis: return Mm{fat_detail::thighFat(proportions.thighFat(patient.sex()), index)};
    case Site::Ventrogluteal: return Mm{fat_detail::hipFat(proportions.hipFat(patient.sex()), index)};
    }
    return measured(proportions, patient).armFat;
}

}  // namespace fb
