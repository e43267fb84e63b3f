#include "sheet/pdf_update.h"

#include <charconv>
#include <cstdio>
#include <map>
#include <string_view>

#include "text/unicode.h"

namespace tenter::sheet {

namespace {

/// The whole number that follows `key` after the last place before `end`; empty if there is none.
std::optional<std::size_t> numberAfter(std::string_view text, std::string_view key) {
    std::size_t at = text.find(key);
    if (at == std::string_view::npos) return std::nullopt;
    at = text.find_first_of("0123456789", at + key.size());
    if (at == std::string_view::npos) return std::nullopt;
    std::size_t value = 0;
    std::from_chars(text.data() + at, text.data() + text.size(), value);
    return value;
}

/// The dictionary of an object, `<<` to `>>`, and the text around it as the file has it.
struct Object {
    std::size_t number = 0;
    std::string dictionary;
};

/// The objects whose dictionary contains `marker`, by number. Cairo writes dictionaries of the structure and
/// of the catalogue as plain text, with the number at the start of a line.
std::map<std::size_t, std::string> objectsWith(const std::string& pdf, std::string_view marker) {
    std::map<std::size_t, std::string> found;
    for (std::size_t at = pdf.find(marker); at != std::string::npos; at = pdf.find(marker, at + 1)) {
        const std::size_t head = pdf.rfind(" 0 obj", at);
        const std::size_t end = pdf.find("endobj", at);
        if (head == std::string::npos || end == std::string::npos) continue;
        const std::size_t line = pdf.rfind('\n', head) + 1;
        std::size_t number = 0;
        std::from_chars(pdf.data() + line, pdf.data() + head, number);
        const std::size_t body = head + std::string_view(" 0 obj").size();
        if (number > 0 && pdf.find("endobj", body) == end) found[number] = pdf.substr(body, end - body);
    }
    return found;
}

/// `dictionary` with entries before its end.
std::string extended(const std::string& dictionary, const std::string& entries) {
    const std::size_t end = dictionary.rfind(">>");
    return dictionary.substr(0, end) + "   " + entries + "\n" + dictionary.substr(end);
}

std::string padded(std::size_t number) {
    char text[24];
    std::snprintf(text, sizeof text, "%010zu", number);
    return text;
}

/// Appends new versions of objects, their cross-reference table and the trailer.
std::string updated(std::string pdf, const std::map<std::size_t, std::string>& objects) {
    const std::size_t start = pdf.rfind("startxref");
    const std::size_t trailer = pdf.rfind("trailer");
    const std::string_view end = std::string_view(pdf).substr(trailer);
    const auto previous = numberAfter(std::string_view(pdf).substr(start), "startxref");
    const auto size = numberAfter(end, "/Size");
    const auto root = numberAfter(end, "/Root");
    const auto info = numberAfter(end, "/Info");
    if (!previous || !size || !root || !info) return {};
    std::string table = "xref\n";
    for (const auto& [number, dictionary] : objects) {
        table.append(std::to_string(number)).append(" 1\n");
        table.append(padded(pdf.size())).append(" 00000 n \n");
        pdf.append(std::to_string(number)).append(" 0 obj").append(dictionary).append("endobj\n");
    }
    const std::size_t place = pdf.size();
    pdf.append(table).append("trailer\n<< /Size ").append(std::to_string(*size));
    pdf.append("\n   /Root ").append(std::to_string(*root)).append(" 0 R\n   /Info ");
    pdf.append(std::to_string(*info)).append(" 0 R\n   /Prev ").append(std::to_string(*previous));
    return pdf.append("\n>>\nstartxref\n").append(std::to_string(place)).append("\n%%EOF\n");
}

}  // namespace

std::string pdfString(const std::string& utf8) {
    std::string out = "<FEFF";
    for (const char16_t unit : text::toUtf16(utf8)) {
        char digits[8];
        std::snprintf(digits, sizeof digits, "%04X", static_cast<unsigned>(unit));
        out += digits;
    }
    return out + ">";
}

std::optional<std::string> withAdditions(std::string pdf, const PdfAdditions& additions) {
    const auto catalogues = objectsWith(pdf, "/Type /Catalog");
    const auto figures = objectsWith(pdf, "/S /Figure");
    const auto heads = objectsWith(pdf, "/S /TH");
    if (catalogues.size() != 1 || figures.size() != additions.alternativeTexts.size() ||
        heads.size() != additions.columnHeads.size())
        return std::nullopt;
    std::map<std::size_t, std::string> objects;
    const auto& [root, catalogue] = *catalogues.begin();
    objects[root] = extended(
        catalogue, "/Lang (" + additions.language + ")\n   /ViewerPreferences << /DisplayDocTitle true >>");
    std::size_t next = 0;
    for (const auto& [number, dictionary] : figures)
        objects[number] = extended(dictionary, "/Alt " + pdfString(additions.alternativeTexts[next++]));
    next = 0;
    for (const auto& [number, dictionary] : heads)
        objects[number] =
            extended(dictionary, std::string("/A << /O /Table /Scope /") +
                                     (additions.columnHeads[next++] ? "Column" : "Row") + " >>");
    std::string out = updated(std::move(pdf), objects);
    if (out.empty()) return std::nullopt;
    return out;
}

}  // namespace tenter::sheet
