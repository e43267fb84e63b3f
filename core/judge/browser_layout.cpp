#include "judge/browser_layout.h"

#include <charconv>
#include <cmath>
#include <nlohmann/json.hpp>

namespace tenter::judge {

namespace {

using Json = nlohmann::json;

/// Reads layouts from JSON that may be hostile. Keeps the first error, with its place.
class Reader {
public:
    std::string wrong;

    std::vector<BrowserLayout> layouts(const Json& document) {
        std::vector<BrowserLayout> all;
        const Json* list = member(document, "layouts", "");
        if (list == nullptr || !isList(*list, "/layouts")) return all;
        for (std::size_t i = 0; i < list->size() && wrong.empty(); ++i)
            all.push_back(layout((*list)[i], "/layouts/" + std::to_string(i)));
        return all;
    }

private:
    void fail(const std::string& place, const std::string& says) {
        if (wrong.empty()) wrong = (place.empty() ? std::string("/") : place) + ": " + says;
    }

    const Json* member(const Json& object, const char* name, const std::string& place) {
        if (!object.is_object() || !object.contains(name)) {
            fail(place, std::string("\"") + name + "\" is missing");
            return nullptr;
        }
        return &object[name];
    }

    bool isList(const Json& value, const std::string& place) {
        if (!value.is_array()) fail(place, "must be a list");
        return value.is_array();
    }

    double number(const Json& value, const std::string& place) {
        const double number = value.is_number() ? value.get<double>() : std::nan("");
        if (!std::isfinite(number)) fail(place, "must be a number");
        return number;
    }

    layout::Box box(const Json* value, const std::string& place) {
        if (value == nullptr) return {};
        if (!value->is_array() || value->size() != 4) {
            fail(place, "must be a box of four numbers");
            return {};
        }
        const auto side = [&](std::size_t i) { return number((*value)[i], place + "/" + std::to_string(i)); };
        return {side(0), side(1), side(2), side(3)};
    }

    BrowserLayout layout(const Json& value, const std::string& place) {
        BrowserLayout reading;
        if (const Json* width = member(value, "width", place))
            reading.width = number(*width, place + "/width");
        reading.row = box(member(value, "row", place), place + "/row");
        const Json* cards = member(value, "cards", place);
        if (cards != nullptr && isList(*cards, place + "/cards"))
            for (std::size_t i = 0; i < cards->size(); ++i)
                reading.cards.push_back(box(&(*cards)[i], place + "/cards/" + std::to_string(i)));
        const Json* parts = member(value, "parts", place);
        if (parts != nullptr && isList(*parts, place + "/parts"))
            for (std::size_t i = 0; i < parts->size(); ++i)
                reading.parts.push_back(part((*parts)[i], place + "/parts/" + std::to_string(i)));
        return reading;
    }

    BrowserPart part(const Json& value, const std::string& place) {
        BrowserPart part;
        if (const Json* name = member(value, "name", place)) readName(*name, place + "/name", part);
        part.box = box(member(value, "box", place), place + "/box");
        const Json* size = member(value, "fontSize", place);
        if (size != nullptr && !size->is_null()) part.fontSize = number(*size, place + "/fontSize");
        const Json* lines = member(value, "lines", place);
        if (lines == nullptr || lines->is_null()) return part;
        if (!lines->is_number_unsigned() || lines->get<std::uint64_t>() > UINT32_MAX)
            fail(place + "/lines", "must be a whole number of lines");
        else
            part.lines = lines->get<std::uint32_t>();
        return part;
    }

    /// `CARD.PART`
    void readName(const Json& value, const std::string& place, BrowserPart& part) {
        const std::string name = value.is_string() ? value.get<std::string>() : std::string();
        const char* end = name.data() + name.size();
        const auto [dot, cardWrong] = std::from_chars(name.data(), end, part.card);
        if (cardWrong == std::errc() && dot != end && *dot == '.') {
            const auto [rest, partWrong] = std::from_chars(dot + 1, end, part.part);
            if (partWrong == std::errc() && rest == end) return;
        }
        fail(place, "must be the name of a part, such as 0.1 (card 0, part 1)");
    }
};

}  // namespace

void BrowserLayout::moveRowTo(double y) {
    const double by = y - row.y;
    row.y = y;
    for (layout::Box& card : cards)
        card.y += by;
    for (BrowserPart& part : parts)
        part.box.y += by;
}

std::optional<std::vector<BrowserLayout>> parseBrowserLayouts(std::string_view json, std::string& wrong) {
    const Json document = Json::parse(json, nullptr, false);
    if (document.is_discarded()) {
        wrong = "/: is not valid JSON";
        return std::nullopt;
    }
    Reader reader;
    std::vector<BrowserLayout> all = reader.layouts(document);
    wrong = reader.wrong;
    if (!wrong.empty()) return std::nullopt;
    return all;
}

}  // namespace tenter::judge
