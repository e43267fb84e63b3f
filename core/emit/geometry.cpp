#include "emit/geometry.h"

#include <array>
#include <charconv>
#include <cmath>

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

    std::vector<std::string> roles_;
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
        layout::layOut(row, width, laid);
        writer.layout(laid);
        if (text.size() < pieceSize) continue;
        sink(text);
        text.clear();
    }
    text += "]}\n";
    sink(text);
}

}  // namespace tenter::emit
