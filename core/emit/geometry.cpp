#include "emit/geometry.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <map>
#include <set>

#include "emit/escape.h"

namespace tenter::emit {

namespace {

constexpr std::size_t pieceSize = std::size_t{1} << 16;

class GeometryWriter {
public:
    explicit GeometryWriter(const layout::PreparedRow& row) {
        for (const std::string& role : row.roles())
            roles_.push_back(jsonString(role));
    }

    std::string& text() { return text_; }

    /// The font files that texts were measured with, in the order of their first use.
    void fonts() {
        text_ += "\"fonts\": [";
        for (std::size_t i = 0; i < faces_.size(); ++i) {
            const text::Face& face = *faces_[i];
            if (i > 0) text_ += ",";
            text_ += "\n  {\"file\": " + jsonString(face.file().string()) +
                     ", \"index\": " + std::to_string(face.index()) +
                     ", \"name\": " + jsonString(face.postScriptName()) +
                     ", \"variable\": " + (face.minWeight() < face.maxWeight() ? "true" : "false") + "}";
        }
        text_ += "]";
    }

    void layout(const layout::Layout& laid) {
        text_ += "{\"width\": ";
        number(laid.width);
        text_ += ", \"band\": " + std::to_string(laid.band) + ",\n   \"row\": ";
        box(laid.row);
        text_ += ",\n   \"cards\": [";
        for (std::size_t i = 0; i < laid.cards.size(); ++i) {
            if (i > 0) text_ += ",";
            text_ += "\n    ";
            card(laid, laid.cards[i]);
        }
        text_ += "]}";
    }

private:
    /// The shortest text that is read as the same number. JSON has no infinities; they become 0.
    void number(double value) {
        std::array<char, 32> digits{};
        const auto end =
            std::to_chars(digits.data(), digits.data() + digits.size(), std::isfinite(value) ? value : 0);
        text_.append(digits.data(), end.ptr);
    }

    void member(const char* key, double value) {
        text_ += ", \"";
        text_ += key;
        text_ += "\": ";
        number(value);
    }

    void box(const layout::Box& box) {
        text_ += "{\"x\": ";
        number(box.x);
        member("y", box.y);
        member("width", box.width);
        member("height", box.height);
        text_ += '}';
    }

    void card(const layout::Layout& laid, const layout::LaidCard& card) {
        text_ += "{\"box\": ";
        box(card.box);
        text_ += ",\n     \"parts\": [";
        for (std::uint32_t i = 0; i < card.partCount; ++i) {
            if (i > 0) text_ += ',';
            text_ += "\n      ";
            part(laid, laid.parts[card.firstPart + i]);
        }
        text_ += "]}";
    }

    void part(const layout::Layout& laid, const layout::LaidPart& part) {
        text_ += "{\"kind\": ";
        text_ += part.picture ? "\"picture\"" : roles_[part.role];
        text_ += ", \"box\": ";
        box(part.box);
        if (!part.picture) {
            member("fontSize", part.fontSize);
            member("lineHeight", part.lineHeight);
            member("available", part.available);
            member("measure", part.measure);
            member("slack", part.slack);
            text_ += fontsOf(*part.paragraph);
            text_ += ", \"lines\": [";
            for (std::uint32_t i = 0; i < part.lineCount; ++i) {
                if (i > 0) text_ += ", ";
                line(*part.paragraph, laid.lines[part.firstLine + i].line);
            }
            text_ += ']';
        }
        text_ += '}';
    }

    void line(const text::Paragraph& paragraph, const text::Line& line) {
        text_ += "{\"text\": ";
        text_ += jsonString(paragraph.utf8(line.first, line.end));
        member("width", line.width);
        text_ += '}';
    }

    /// The members `fonts` and `spaceFonts` of `paragraph`, indices into `faces_`, as JSON.
    const std::string& fontsOf(const text::Paragraph& paragraph) {
        const auto [known, isNew] = fontsOf_.try_emplace(&paragraph);
        if (!isNew) return known->second;
        std::set<std::size_t> letters;
        std::set<std::size_t> spaces;
        for (const text::Cluster& cluster : paragraph.clusters()) {
            const text::FacePtr& face = paragraph.runs()[cluster.run].face;
            if (face && cluster.visible) (cluster.space ? spaces : letters).insert(indexOf(face));
        }
        known->second = ", \"fonts\": " + list(letters) + ", \"spaceFonts\": " + list(spaces);
        return known->second;
    }

    std::size_t indexOf(const text::FacePtr& face) {
        const auto at = std::ranges::find_if(faces_, [&](const text::FacePtr& one) {
            return one->file() == face->file() && one->index() == face->index();
        });
        const auto index = static_cast<std::size_t>(at - faces_.begin());
        if (at == faces_.end()) faces_.push_back(face);
        return index;
    }

    static std::string list(const std::set<std::size_t>& indices) {
        std::string out = "[";
        for (const std::size_t index : indices)
            out += (out.size() > 1 ? ", " : "") + std::to_string(index);
        return out + "]";
    }

    std::vector<std::string> roles_;
    std::vector<text::FacePtr> faces_;
    std::map<const text::Paragraph*, std::string> fontsOf_;
    std::string text_;
};

}  // namespace

void writeGeometry(const layout::PreparedRow& row, const GeometryHead& head,
                   const std::vector<double>& widths, const std::function<void(const std::string&)>& sink) {
    GeometryWriter writer(row);
    std::string& text = writer.text();
    text = R"({"format": "tenter-geometry", "version": 1, "project": )" + jsonString(head.project) +
           ", \"variant\": " + jsonString(head.variant) + ", \"engine\": " + jsonString(head.engine) +
           ",\n \"layouts\": [";
    layout::Layout laid;
    bool first = true;
    for (const double width : widths) {
        text += first ? "\n  " : ",\n  ";
        first = false;
        layout::layOutDrawn(row, width, laid);
        writer.layout(laid);
        if (text.size() < pieceSize) continue;
        sink(text);
        text.clear();
    }
    text += "],\n ";
    writer.fonts();
    text += "}\n";
    sink(text);
}

}  // namespace tenter::emit
