// Every string about 40 percent longer and in accented letters, placeholders kept: shows
// which words do not pass through tr(), and which places have no room for a wordier language.
#pragma once

#include <QTranslator>

namespace fb::test {

class PseudoTranslator : public QTranslator {
public:
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char* disambiguation,
                                    int n) const override;
};

[[nodiscard]] QString pseudo(const QString& source);

}  // namespace fb::test
