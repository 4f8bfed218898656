// Reading and checking a policy file: see policy.h for the contract.
#include <algorithm>
#include <nlohmann/json.hpp>

#include "core/policy/policy.h"

namespace fb {

namespace policy_reader_detail {

using nlohmann::json;

std::size_t lineOf(std::string_view text, std::size_t byte)
{
    const auto upTo = text.substr(0, std::min(byte, text.size()));
    return 1 + static_cast<std::size_t>(std::ranges::count(upTo, '\n'));
}

Result<json> parsedObject(std::string_view text)
{
    try {
        json document = json::parse(text);
        if (!document.is_object())
            return fault(Problem::PolicyWrongType, "the file", document.type_name());
        return document;
    } catch (const json::parse_error& error) {
        return fault(Problem::PolicyCutShort, std::to_string(lineOf(text, error.byte)));
    } catch (const json::out_of_range&) {
        return fault(Problem::PolicyWrongType, "the file", "number too large");
    }
}

const PolicyField* fieldNamed(std::string_view group, std::string_view name)
{
    const auto fields = policyFields();
    const auto it = std::ranges::find_if(
        fields, [&](const PolicyField& f) { return f.group == group && f.name == name; });
    return it == fields.end() ? nullptr : &*it;
}

bool isGroup(std::string_view name)
{
    return std::ranges::any_of(policyFields(), [&](const PolicyField& f) { return f.group == name; });
}

}  // namespace policy_reader_detail

using policy_reader_detail::json;

class PolicyReader {
public:
    explicit PolicyReader(Policy start) : m_policy(std::move(start)) {}

    [[nodiscard]] static Result<Policy> complete(std::string_view text)
    {
        PolicyReader reader{Policy{}};
        if (const auto read = reader.read(text); !read)
            return tl::unexpected(read.error());
        for (const PolicyField& f : policyFields()) {
            if (!reader.m_seen[Policy::index(f.key)])
                return fault(Problem::PolicyMissingKey, keyOf(f.group, f.name));
        }
        return reader.inOrder();
    }

    [[nodiscard]] static Result<Policy> over(std::string_view text, const Policy& base)
    {
        PolicyReader reader{base};
        if (const auto read = reader.read(text); !read)
            return tl::unexpected(read.error());
        return reader.inOrder();
    }

private:
    [[nodiscard]] static std::string keyOf(std::string_view group, std::string_view name)
    {
        return std::string(group) + "." + std::string(name);
    }

    [[nodiscard]] Result<bool> read(std::string_view text)
    {
        const auto document = policy_reader_detail::parsedObject(text);
        if (!document)
            return tl::unexpected(document.error());
        for (const auto& [name, value] : document->items()) {
            const auto read = name == "name"          ? readName(value)
                              : name == "conventions" ? readConventions(value)
                              : policy_reader_detail::isGroup(name)
                                  ? readGroup(name, value)
                                  : Result<bool>(fault(Problem::PolicyUnknownKey, name));
            if (!read)
                return read;
        }
        return true;
    }

    [[nodiscard]] Result<bool> readName(const json& value)
    {
        if (!value.is_string())
            return fault(Problem::PolicyWrongType, "name", value.type_name());
        m_policy.m_name = value.get<std::string>();
        return true;
    }

    [[nodiscard]] Result<bool> readConventions(const json& value)
    {
        if (!value.is_object())
            return fault(Problem::PolicyWrongType, "conventions", value.type_name());
        for (const auto& [site, id] : value.items()) {
            const std::string key = keyOf("conventions", site);
            const auto named = siteFrom(site);
            if (!named)
                return fault(Problem::PolicyUnknownKey, key);
            if (!id.is_string())
                return fault(Problem::PolicyWrongType, key, id.type_name());
            const auto convention = conventionFrom(id.get<std::string>());
            if (!convention)
                return fault(Problem::ConventionUnknown, key, id.get<std::string>());
            if (siteOf(*convention) != *named)
                return fault(Problem::ConventionOfAnotherSite, key, id.get<std::string>());
            m_policy.m_conventions[static_cast<std::size_t>(*named)] = *convention;
        }
        return true;
    }

    [[nodiscard]] Result<bool> readGroup(const std::string& group, const json& value)
    {
        if (!value.is_object())
            return fault(Problem::PolicyWrongType, group, value.type_name());
        for (const auto& [name, entry] : value.items()) {
            const PolicyField* field = policy_reader_detail::fieldNamed(group, name);
            if (!field)
                return fault(Problem::PolicyUnknownKey, keyOf(group, name));
            if (const auto read = readField(*field, entry); !read)
                return read;
        }
        return true;
    }

    [[nodiscard]] Result<bool> readField(const PolicyField& field, const json& entry)
    {
        const std::string key = keyOf(field.group, field.name);
        if (!entry.is_object())
            return fault(Problem::PolicyWrongType, key, entry.type_name());
        for (const auto& [name, part] : entry.items()) {
            if (name != "value" && name != "source")
                return fault(Problem::PolicyUnknownKey, key + "." + name);
        }
        if (!entry.contains("value"))
            return fault(Problem::PolicyMissingKey, key + ".value");
        if (!entry["value"].is_number())
            return fault(Problem::PolicyWrongType, key, entry["value"].type_name());
        const double value = entry["value"].get<double>();
        if (!(value >= field.low && value <= field.high))
            return fault(Problem::PolicyOutOfRange, key, entry["value"].dump(), field.low, field.high);
        if (!entry.contains("source") || !entry["source"].is_string() ||
            entry["source"].get<std::string>().empty())
            return fault(Problem::PolicyNoSource, key);
        m_policy.m_values[Policy::index(field.key)] = value;
        m_policy.m_sources[Policy::index(field.key)] = entry["source"].get<std::string>();
        m_seen[Policy::index(field.key)] = true;
        return true;
    }

    // Pairs that must stand in order, or a region would be turned inside out.
    [[nodiscard]] Result<Policy> inOrder() const
    {
        using enum PolicyKey;
        static constexpr std::array<std::pair<PolicyKey, PolicyKey>, 16> kRising{{
            {DeltoidStripTop, DeltoidStripIdeal},
            {DeltoidStripIdeal, DeltoidStripBottom},
            {JointShare, DeltoidStripBottom},
            {DeltoidFingersLow, DeltoidFingersHigh},
            {NerveFrontLow, NerveFrontHigh},
            {NerveBackLow, NerveBackHigh},
            {VastusTop, VastusIdeal},
            {VastusIdeal, VastusBottom},
            {ThighEnds, VastusTop},
            {VastusFront, VastusIdealRound},
            {VastusIdealRound, VastusBack},
            {VastusBack, SciaticRound},
            {SuperiorGlutealLow, SuperiorGlutealHigh},
            {HandHeel, HandFork},
            {HandFork, HandPalm},
            {HandPalm, HandIndex},
        }};
        for (const auto& [low, high] : kRising) {
            const PolicyField& f = policyFields()[Policy::index(high)];
            const double floor = m_policy.value(low);
            if (!(m_policy.value(high) > floor))
                return fault(Problem::PolicyOutOfRange, keyOf(f.group, f.name),
                             json(m_policy.value(high)).dump(), floor, f.high);
        }
        return m_policy;
    }

    Policy m_policy;
    std::array<bool, kPolicyKeyCount> m_seen{};
};

Result<Policy> Policy::parse(std::string_view text) { return PolicyReader::complete(text); }

Result<Policy> Policy::parseOver(std::string_view text, const Policy& base)
{
    return PolicyReader::over(text, base);
}

}  // namespace fb
