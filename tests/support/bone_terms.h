// Names of the landmarks and their near misses as a learner may type them, folded: made for the
// tests, not the program's own lists.
#pragma once

#include <vector>

#include "core/naming/term_match.h"

namespace fb::test {

enum Bone {
    Acromion,
    Armpit,
    Tuberosity,
    Trochanter,
    FrontSpine,
    Crest,
    Tubercle,
    Condyle,
    Patella,
    // near misses
    Clavicle,
    Coracoid,
    LesserTrochanter,
    LowerSpine,
    BackSpine,
    Ischium,
    MedialCondyle
};

inline const std::vector<AcceptedTerm>& englishTerms()
{
    static const std::vector<AcceptedTerm> terms{
        {Acromion, U"acromion"},
        {Acromion, U"acromion process"},
        {Armpit, U"armpit level"},
        {Armpit, U"axilla"},
        {Tuberosity, U"deltoid tuberosity"},
        {Trochanter, U"greater trochanter"},
        {FrontSpine, U"anterior superior iliac spine"},
        {FrontSpine, U"asis"},
        {Crest, U"iliac crest"},
        {Tubercle, U"iliac tubercle"},
        {Condyle, U"lateral femoral condyle"},
        {Condyle, U"lateral femoral epicondyle"},
        {Patella, U"patella"},
        {Patella, U"kneecap"},
        {Clavicle, U"clavicle"},
        {Coracoid, U"coracoid process"},
        {LesserTrochanter, U"lesser trochanter"},
        {LowerSpine, U"anterior inferior iliac spine"},
        {BackSpine, U"posterior superior iliac spine"},
        {BackSpine, U"psis"},
        {Ischium, U"ischial tuberosity"},
        {MedialCondyle, U"medial femoral condyle"},
    };
    return terms;
}

inline const std::vector<AcceptedTerm>& spanishTerms()
{
    static const std::vector<AcceptedTerm> terms{
        {Acromion, U"acromion"},
        {Armpit, U"nivel de la axila"},
        {Tuberosity, U"tuberosidad deltoidea"},
        {Trochanter, U"trocanter mayor"},
        {FrontSpine, U"espina iliaca anterosuperior"},
        {FrontSpine, U"eias"},
        {Crest, U"cresta iliaca"},
        {Tubercle, U"tuberculo iliaco"},
        {Condyle, U"condilo femoral lateral"},
        {Condyle, U"condilo femoral externo"},
        {Patella, U"rotula"},
        {LesserTrochanter, U"trocanter menor"},
        {LowerSpine, U"espina iliaca anteroinferior"},
        {BackSpine, U"espina iliaca posterosuperior"},
        {BackSpine, U"eips"},
        {Ischium, U"tuberosidad isquiatica"},
        {MedialCondyle, U"condilo femoral medial"},
        {MedialCondyle, U"condilo femoral interno"},
    };
    return terms;
}

}  // namespace fb::test
