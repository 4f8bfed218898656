#include "app/words/landmark_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace fb {

namespace landmark_words_detail {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fb::LandmarkWords)
};

// Beside the name itself.
QString synonyms(Landmark landmark)
{
    //: What a learner may type for a landmark, beside its name: terms of the trade, everyday words and
    //: short forms of your language, with | between them. Capitals, accents and hyphens do not count.
    //: As many as you like; none may belong to another bone of the same part of the body.
    switch (landmark) {
    case Landmark::Acromion:
        return Words::tr("acromion process|acromial process|edge of the acromion|lateral edge of the "
                         "acromion|tip of the acromion|bony tip of the shoulder|point of the shoulder");
    case Landmark::ArmpitLevel:
        return Words::tr("level of the armpit|height of the armpit|armpit|axilla|axilla level|axillary "
                         "level|level of the axilla");
    case Landmark::DeltoidTuberosity:
        return Words::tr("tuberosity of the deltoid|deltoid insertion|insertion of the deltoid|end of the "
                         "deltoid");
    case Landmark::GreaterTrochanter:
        return Words::tr("trochanter major|great trochanter|greater trochanter of the femur|GT");
    case Landmark::AnteriorSuperiorIliacSpine:
        return Words::tr("ASIS|anterior superior spine|anterosuperior iliac spine|superior anterior iliac "
                         "spine|front point of the hip bone");
    case Landmark::IliacCrest: return Words::tr("crest of the ilium|crest|hip bone crest|pelvic crest");
    case Landmark::IliacTubercle:
        return Words::tr("tubercle of the iliac crest|iliac crest tubercle|tubercle of the ilium|tubercle of "
                         "the crest|tubercle");
    case Landmark::LateralFemoralCondyle:
        return Words::tr("lateral condyle|lateral condyle of the femur|outer femoral condyle|outer "
                         "condyle|lateral femoral epicondyle|lateral epicondyle|lateral epicondyle of the "
                         "femur");
    case Landmark::Patella: return Words::tr("kneecap|knee cap|middle of the patella|middle of the kneecap");
    case Landmark::Clavicle: return Words::tr("collarbone|collar bone");
    case Landmark::CoracoidProcess: return Words::tr("coracoid|coracoid process of the scapula");
    case Landmark::ScapularSpine: return Words::tr("scapular spine|spine of the shoulder blade");
    case Landmark::HumeralHead: return Words::tr("humeral head|head of the upper arm bone");
    case Landmark::ElbowEpicondyle:
        return Words::tr("lateral epicondyle|epicondyle|outer epicondyle|epicondyle of the humerus");
    case Landmark::LesserTrochanter: return Words::tr("trochanter minor|small trochanter|LT");
    case Landmark::AnteriorInferiorIliacSpine:
        return Words::tr("AIIS|anterior inferior spine|inferior anterior iliac spine");
    case Landmark::PosteriorSuperiorIliacSpine:
        return Words::tr("PSIS|posterior superior spine|superior posterior iliac spine");
    case Landmark::IschialTuberosity:
        return Words::tr("sit bone|sitting bone|tuberosity of the ischium|ischial tuber");
    case Landmark::PubicSymphysis: return Words::tr("symphysis|symphysis pubis|pubic bone");
    case Landmark::MedialFemoralCondyle:
        return Words::tr("medial condyle|medial condyle of the femur|inner femoral condyle|inner "
                         "condyle|medial femoral epicondyle|medial epicondyle");
    case Landmark::TibialTuberosity:
        return Words::tr("tuberosity of the tibia|tibial tubercle|shin bone tuberosity");
    case Landmark::FibularHead: return Words::tr("fibular head|fibula head|head of fibula");
    }
    return {};
}

}  // namespace landmark_words_detail

QString landmarkName(Landmark landmark)
{
    using landmark_words_detail::Words;
    switch (landmark) {
    case Landmark::Acromion: return Words::tr("Acromion");
    case Landmark::ArmpitLevel: return Words::tr("Armpit level");
    case Landmark::DeltoidTuberosity: return Words::tr("Deltoid tuberosity");
    case Landmark::GreaterTrochanter: return Words::tr("Greater trochanter");
    case Landmark::AnteriorSuperiorIliacSpine: return Words::tr("Anterior superior iliac spine");
    case Landmark::IliacCrest: return Words::tr("Iliac crest");
    case Landmark::IliacTubercle: return Words::tr("Iliac tubercle");
    case Landmark::LateralFemoralCondyle: return Words::tr("Lateral femoral condyle");
    case Landmark::Patella: return Words::tr("Patella");
    case Landmark::Clavicle: return Words::tr("Clavicle");
    case Landmark::CoracoidProcess: return Words::tr("Coracoid process");
    case Landmark::ScapularSpine: return Words::tr("Spine of the scapula");
    case Landmark::HumeralHead: return Words::tr("Head of the humerus");
    case Landmark::ElbowEpicondyle: return Words::tr("Lateral epicondyle of the humerus");
    case Landmark::LesserTrochanter: return Words::tr("Lesser trochanter");
    case Landmark::AnteriorInferiorIliacSpine: return Words::tr("Anterior inferior iliac spine");
    case Landmark::PosteriorSuperiorIliacSpine: return Words::tr("Posterior superior iliac spine");
    case Landmark::IschialTuberosity: return Words::tr("Ischial tuberosity");
    case Landmark::PubicSymphysis: return Words::tr("Pubic symphysis");
    case Landmark::MedialFemoralCondyle: return Words::tr("Medial femoral condyle");
    case Landmark::TibialTuberosity: return Words::tr("Tibial tuberosity");
    case Landmark::FibularHead: return Words::tr("Head of the fibula");
    }
    return {};
}

std::u32string folded(const QString& text)
{
    QString kept;
    for (const QChar c : text.normalized(QString::NormalizationForm_KD)) {
        if (c.isMark() || c == QLatin1Char('.') || c == QLatin1Char('\''))
            continue;
        kept += c.isLetterOrNumber() || c.isSurrogate() ? c : QChar(QLatin1Char(' '));
    }
    return kept.toCaseFolded().simplified().toStdU32String();
}

std::vector<AcceptedTerm> acceptedTerms(Site site)
{
    using landmark_words_detail::synonyms;
    std::vector<AcceptedTerm> terms;
    for (const Landmark landmark : offeredLandmarks(site)) {
        const QStringList words = QStringList{landmarkName(landmark)} +
                                  synonyms(landmark).split(QLatin1Char('|'), Qt::SkipEmptyParts);
        for (const QString& word : words)
            terms.push_back({static_cast<int>(landmark), folded(word)});
    }
    return terms;
}

TermMatch named(const QString& typed, Site site) { return matchedTerm(folded(typed), acceptedTerms(site)); }

}  // namespace fb
