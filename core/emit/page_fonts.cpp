#include "emit/page_fonts.h"

#include <hb.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <map>
#include <optional>
#include <utility>

#include "emit/data_address.h"
#include "emit/escape.h"
#include "emit/values.h"
#include "layout/layout.h"
#include "project/file_bytes.h"
#include "text/font_bytes.h"
#include "text/font_weight.h"
#include "text/generic_families.h"
#include "text/unicode.h"
#include "units/number.h"

namespace tenter::emit {

using Families = std::vector<std::string>;

namespace {

/// Stands in the range of a rule that is for no character: no text contains it (text::toUtf16).
constexpr char32_t noCharacter = 0;

bool contains(const Families& list, const std::string& family) {
    return std::ranges::find(list, family) != list.end();
}

void addOnce(Families& list, const std::string& family) {
    if (!contains(list, family)) list.push_back(family);
}

/// The bytes of a single face of a font collection: browsers read only single fonts from a `data:` address.
std::string singleFont(const text::Face& face) {
    if (!face.bytes().starts_with("ttcf")) return face.bytes();
    hb_face_t* source = hb_font_get_face(face.font());
    hb_face_t* builder = hb_face_builder_create();
    std::array<hb_tag_t, 64> tags{};
    unsigned start = 0;
    unsigned count = 0;
    do {
        count = static_cast<unsigned>(tags.size());
        hb_face_get_table_tags(source, start, &count, tags.data());
        for (unsigned i = 0; i < count; ++i) {
            hb_blob_t* table = hb_face_reference_table(source, tags[i]);
            hb_face_builder_add_table(builder, tags[i], table);
            hb_blob_destroy(table);
        }
        start += count;
    } while (count == tags.size());
    hb_blob_t* whole = hb_face_reference_blob(builder);
    unsigned size = 0;
    const char* data = hb_blob_get_data(whole, &size);
    std::string out = data == nullptr ? std::string() : std::string(data, size);
    hb_blob_destroy(whole);
    hb_face_destroy(builder);
    return out;
}

std::string hexadecimal(char32_t character) {
    std::array<char, 8> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(),
                                   static_cast<std::uint32_t>(character), 16);
    std::string out(digits.data(), end.ptr);
    std::ranges::transform(out, out.begin(),
                           [](char c) { return c >= 'a' ? static_cast<char>(c - 'a' + 'A') : c; });
    return out;
}

/// The characters that engines look up in a face for one cluster.
void collect(const text::Paragraph& paragraph, std::size_t cluster, std::set<char32_t>& out) {
    const std::u16string_view all = paragraph.text();
    const auto& clusters = paragraph.clusters();
    const std::size_t begin = clusters[cluster].begin;
    const std::size_t end = cluster + 1 < clusters.size() ? clusters[cluster + 1].begin : all.size();
    out.merge(text::charactersShaped(all.substr(begin, end - begin)));
}

/// The families that one role uses in one band.
struct RoleFonts {
    Families listed;    ///< named in the list of the role
    Families standIns;  ///< for generic families, and the default
    Families fallbacks;
    /// For each weight and slant (true: italic), the characters that fallbacks draw.
    std::map<std::pair<double, bool>, std::set<char32_t>> drawn;
};

class Collector {
public:
    explicit Collector(std::vector<FaceRule>& rules) : rules_(rules) {}

    void add(const text::Paragraph& paragraph, const project::TextStyle& style, RoleFonts& fonts) {
        const Families list = style.family.value_or(Families{});
        const auto styleOf = [&](const text::ShapedRun& run) {
            using Kind = project::Run::Kind;
            const double weight = style.weight.value_or(400);
            return std::pair(run.kind == Kind::Strong ? text::bolder(weight) : weight,
                             run.kind == Kind::Emphasis || style.slant == project::Slant::Italic);
        };
        for (std::size_t i = 0; i < paragraph.clusters().size(); ++i) {
            const text::ShapedRun& run = paragraph.runs()[paragraph.clusters()[i].run];
            if (!run.face) continue;
            if (run.fallback) {
                const std::string& family = run.face->family();
                const bool named = contains(list, family) && !text::isGenericFamily(family);
                std::string name(named ? namedFallback : otherFallback);
                name += family;
                addOnce(fonts.fallbacks, name);
                collect(paragraph, i, rule(name, run.face, true).characters);
                collect(paragraph, i, fonts.drawn[styleOf(run)]);
            } else {
                addListed(run.face, list, fonts);
            }
        }
        // Line heights depend on the first face of the family, even if no character is drawn with it.
        // CSS Inline 3 § 5.3.
        if (!paragraph.unlikeStruts()) return;
        if (paragraph.strut()) addListed(paragraph.strut(), list, fonts);
        for (const text::ShapedRun& run : paragraph.runs())
            if (run.strut) addListed(run.strut, list, fonts);
    }

    /// Adds to a fallback family a rule for no character in each style in which text that the family draws in
    /// another style is drawn by another family. Without it, a browser would take the face of the other
    /// style. CSS Fonts 4 § 5.2.
    void addStyles(const RoleFonts& fonts, text::Fonts& files) {
        for (const std::string& name : fonts.fallbacks) {
            const std::string_view prefix = name.starts_with(namedFallback) ? namedFallback : otherFallback;
            const std::string family = name.substr(prefix.size());
            for (const auto& [style, characters] : fonts.drawn) {
                const std::vector<text::FacePtr> found = files.find({family}, style.first, style.second);
                if (found.empty() || found.front()->family() != family) continue;
                if (!drawsAnyOf(name, *found.front(), characters)) continue;
                std::set<char32_t>& own = rule(name, found.front(), true).characters;
                if (own.empty()) own.insert(noCharacter);
            }
        }
    }

private:
    /// Adds a face of the role's list of families, or of the default family.
    void addListed(const text::FacePtr& face, const Families& list, RoleFonts& fonts) {
        const std::string& family = face->family();
        const bool named = contains(list, family) && !text::isGenericFamily(family);
        const std::string name = named ? family : "Tenter " + family;
        addOnce(named ? fonts.listed : fonts.standIns, name);
        rule(name, face, !named);
    }

    /// True if a rule of `family` for another file than that of `face` is for one of `characters`.
    [[nodiscard]] bool drawsAnyOf(const std::string& family, const text::Face& face,
                                  const std::set<char32_t>& characters) const {
        return std::ranges::any_of(rules_, [&](const FaceRule& known) {
            return known.family == family && known.face->file() != face.file() &&
                   std::ranges::any_of(characters,
                                       [&](char32_t one) { return known.characters.contains(one); });
        });
    }

    FaceRule& rule(const std::string& family, const text::FacePtr& face, bool renamed) {
        for (FaceRule& known : rules_)
            if (known.family == family && known.face->file() == face->file() &&
                known.face->index() == face->index() && known.face->minWeight() == face->minWeight() &&
                known.face->maxWeight() == face->maxWeight())
                return known;
        return rules_.emplace_back(FaceRule{family, face, {}, renamed});
    }

    std::vector<FaceRule>& rules_;
};

/// The list of the role: first the families used, in its order; then those that draw none of its texts now,
/// so that the list is not lost; then its generic families.
Families rewritten(const Families& list, const RoleFonts& fonts) {
    Families out;
    Families unused;
    Families generics;
    for (const std::string& family : list) {
        if (text::isGenericFamily(family)) {
            addOnce(generics, family);
            if (contains(fonts.standIns, "Tenter " + family)) addOnce(out, "Tenter " + family);
        } else {
            const std::string fallback = std::string(namedFallback) + family;
            const bool draws = contains(fonts.fallbacks, fallback);
            if (contains(fonts.listed, family)) addOnce(out, family);
            if (draws) addOnce(out, fallback);
            if (!contains(fonts.listed, family) && !draws) addOnce(unused, family);
        }
    }
    for (const Families* more :
         {&fonts.standIns, &fonts.fallbacks, &std::as_const(unused), &std::as_const(generics)})
        for (const std::string& family : *more)
            addOnce(out, family);
    return out;
}

/// A width in band `band`, CSS px.
double widthIn(const project::Variant& variant, std::size_t band) {
    if (variant.bands[band].upTo) return *variant.bands[band].upTo;
    return band == 0 ? 1000 : *variant.bands[band - 1].upTo + 1;
}

}  // namespace

std::string unicodeRange(const std::set<char32_t>& characters) {
    std::string out;
    for (auto at = characters.begin(); at != characters.end();) {
        const char32_t first = *at;
        char32_t last = first;
        while (++at != characters.end() && *at == last + 1)
            last = *at;
        if (!out.empty()) out += ", ";
        out += "U+" + hexadecimal(first);
        if (last != first) out += "-" + hexadecimal(last);
    }
    return out;
}

std::string FaceRule::css() const {
    const std::string bytes = singleFont(*face);
    const bool cff = bytes.starts_with("OTTO");
    return css("url(\"" + dataAddress(cff ? "font/otf" : "font/ttf", bytes) + "\") format(\"" +
               (cff ? "opentype" : "truetype") + "\")");
}

std::string FaceRule::css(const std::string& source, const std::string& descriptors) const {
    std::string weight = units::number(face->minWeight());
    if (face->maxWeight() != face->minWeight()) weight += " " + units::number(face->maxWeight());
    std::string out = "@font-face {\n  font-family: " + cssString(family) + ";\n  src: " + source +
                      ";\n  font-weight: " + weight +
                      ";\n  font-style: " + (face->italic() ? "italic" : "normal") + ";\n" + descriptors;
    if (!characters.empty()) out += "  unicode-range: " + unicodeRange(characters) + ";\n";
    return out + "}\n";
}

FontFile fontFile(const text::Face& face) {
    const std::string start = project::fileStart(face.file(), 4).value_or("");
    for (const auto& [signature, format] : {std::pair{"wOF2", "woff2"}, std::pair{"wOFF", "woff"}}) {
        if (start != signature) continue;
        if (std::optional<std::string> whole = project::fileBytes(face.file(), text::largestFont))
            return {std::move(*whole), format, format};
    }
    std::string bytes = singleFont(face);
    const bool cff = bytes.starts_with("OTTO");
    return {std::move(bytes), cff ? "otf" : "ttf", cff ? "opentype" : "truetype"};
}

PageFonts pageFonts(const project::Project& project, std::size_t variant, text::ParagraphStore& store) {
    PageFonts out{project, {}};
    // One engine may draw a letter with a fallback face that another composes from a letter and its mark.
    std::vector<layout::PreparedRow> rows;
    for (const text::BreakProfile* profile : text::profiles())
        rows.emplace_back(project, variant, store, *profile);
    const layout::PreparedRow& row = rows.front();
    Collector collector(out.faces);
    std::vector<RoleFonts> all;
    for (std::size_t band = 0; band < row.bandCount(); ++band) {
        std::map<std::string, RoleFonts> used;
        for (const layout::PreparedRow& each : rows) {
            const layout::Layout laid = layout::layOut(each, widthIn(project.row().variants[variant], band));
            for (const layout::LaidPart& part : laid.parts) {
                if (part.paragraph == nullptr) continue;
                const std::string& role = row.roles()[part.role];
                collector.add(*part.paragraph, *row.settings(band).text.find(role), used[role]);
            }
        }
        for (const auto& [role, fonts] : used) {
            const Families list = row.settings(band).text.find(role)->family.value_or(Families{});
            out.project.row().variants[variant].bands[band].set.text.of(role).family = rewritten(list, fonts);
            all.push_back(fonts);
        }
    }
    for (const RoleFonts& fonts : all)
        collector.addStyles(fonts, store.fonts());
    return out;
}

}  // namespace tenter::emit
