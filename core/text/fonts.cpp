#include "text/fonts.h"

#include <fontconfig/fontconfig.h>
#include <hb-ot.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>
#include <tuple>
#include <utility>

#include "text/font_bytes.h"
#include "text/generic_families.h"
#include "units/number.h"
#include "wording/say.h"

namespace tenter::text {
/// A font file of a family, with the weights and the slant it has.
struct Candidate {
    std::filesystem::path file;
    unsigned index = 0;
    double least = 400;
    double most = 400;
    bool italic = false;
    bool narrowOrWide = false;
};

namespace {

/// Rank of a candidate's weights for the weight `wanted`; the smallest is the best. CSS Fonts 4 § 5.2 step 4:
/// between 400 and 500, heavier weights up to 500 first; below 400, lighter first; above 500, heavier first.
double weightDistance(const Candidate& candidate, double wanted) {
    if (wanted >= candidate.least && wanted <= candidate.most) return 0;
    const double nearest = wanted < candidate.least ? candidate.least : candidate.most;
    const double far = 10000;
    if (wanted >= 400 && wanted <= 500) {
        if (nearest > wanted && nearest <= 500) return nearest - wanted;
        return nearest < wanted ? 1000 + wanted - nearest : far + nearest;
    }
    if (wanted < 400) return nearest < wanted ? wanted - nearest : far + nearest;
    return nearest > wanted ? nearest - wanted : far + wanted - nearest;
}

const Candidate* best(const std::vector<Candidate>& candidates, double weight, bool italic) {
    const Candidate* chosen = nullptr;
    auto cost = [&](const Candidate& c) {
        // A variable font with its whole range of weights ranks before an instance in the same file.
        return std::tuple(c.narrowOrWide, c.italic != italic, weightDistance(c, weight), c.least - c.most,
                          c.file, c.index);
    };
    for (const Candidate& candidate : candidates)
        if (chosen == nullptr || cost(candidate) < cost(*chosen)) chosen = &candidate;
    return chosen;
}

Candidate fromPattern(FcPattern* pattern, bool& usable, bool& variable) {
    Candidate candidate;
    FcChar8* file = nullptr;
    int index = 0;
    int slant = 0;
    int width = FC_WIDTH_NORMAL;
    FcBool isVariable = FcFalse;
    usable = FcPatternGetString(pattern, FC_FILE, 0, &file) == FcResultMatch;
    if (!usable) return candidate;
    candidate.file = reinterpret_cast<const char*>(file);
    FcPatternGetInteger(pattern, FC_INDEX, 0, &index);
    FcPatternGetInteger(pattern, FC_SLANT, 0, &slant);
    FcPatternGetBool(pattern, FC_VARIABLE, 0, &isVariable);
    variable = isVariable == FcTrue;
    // The upper bits of the index name an instance of a variable font; the list also has the font itself.
    usable = variable || (index >> 16) == 0;
    candidate.index = static_cast<unsigned>(index & 0xFFFF);
    candidate.italic = slant != FC_SLANT_ROMAN;
    if (FcPatternGetInteger(pattern, FC_WIDTH, 0, &width) == FcResultMatch)
        candidate.narrowOrWide = width != FC_WIDTH_NORMAL;
    double weight = FC_WEIGHT_REGULAR;
    FcRange* range = nullptr;
    if (FcPatternGetRange(pattern, FC_WEIGHT, 0, &range) == FcResultMatch) {
        double low = 0;
        double high = 0;
        FcRangeGetDouble(range, &low, &high);
        candidate.least = FcWeightToOpenTypeDouble(low);
        candidate.most = FcWeightToOpenTypeDouble(high);
    } else if (FcPatternGetDouble(pattern, FC_WEIGHT, 0, &weight) == FcResultMatch) {
        candidate.least = candidate.most = std::round(FcWeightToOpenTypeDouble(weight));
    }
    return candidate;
}

/// The fonts of the system, listed once for the whole process. Fontconfig may search them on any thread.
FcConfig* systemFonts() {
    static const std::unique_ptr<FcConfig, decltype(&FcConfigDestroy)> config(FcInitLoadConfigAndFonts(),
                                                                              FcConfigDestroy);
    return config.get();
}

bool hasTable(hb_face_t* face, hb_tag_t table) {
    hb_blob_t* blob = hb_face_reference_table(face, table);
    const bool has = hb_blob_get_length(blob) > 0;
    hb_blob_destroy(blob);
    return has;
}

/// The big-endian 16-bit number at byte `at` of a font table; 0 if the table is shorter.
unsigned twoBytes(hb_face_t* face, hb_tag_t table, unsigned at) {
    hb_blob_t* blob = hb_face_reference_table(face, table);
    unsigned length = 0;
    const char* bytes = hb_blob_get_data(blob, &length);
    unsigned value = 0;
    if (length >= at + 2) {
        const auto byte = [&](unsigned i) { return static_cast<unsigned char>(bytes[i]); };
        value = byte(at) * 256U + byte(at + 1);
    }
    hb_blob_destroy(blob);
    return value;
}

/// `weight 400`, `italic of weight 400`; `upright weight 400` beside a style of the other slant.
std::string styleOf(double weight, bool italic, bool sameSlant) {
    const std::string figure = units::number(weight);
    return italic      ? wording::say("italic of weight %1", {figure})
           : sameSlant ? wording::say("weight %1", {figure})
                       : wording::say("upright weight %1", {figure});
}

}  // namespace

Face::~Face() {
    hb_font_destroy(font_);
}

bool Face::has(char32_t character) const {
    hb_codepoint_t glyph = 0;
    return hb_font_get_nominal_glyph(font_, character, &glyph) != 0;
}

std::string Face::postScriptName() const {
    hb_face_t* face = hb_font_get_face(font_);
    std::array<char, 128> name{};
    auto size = static_cast<unsigned>(name.size());
    hb_ot_name_get_utf8(face, HB_OT_NAME_ID_POSTSCRIPT_NAME, HB_LANGUAGE_INVALID, &size, name.data());
    return {name.data(), std::min<std::size_t>(size, name.size() - 1)};
}

bool Face::composes(char32_t character) const {
    hb_codepoint_t letter = 0;
    hb_codepoint_t mark = 0;
    if (hb_unicode_decompose(hb_unicode_funcs_get_default(), character, &letter, &mark) == 0) return false;
    return (mark == 0 || has(mark)) && (has(letter) || composes(letter));
}

struct Fonts::Cache {
    FcConfig* config = systemFonts();
    std::vector<project::FontEntry> entries;
    std::filesystem::path folder;
    std::map<std::string, std::vector<Candidate>> families;
    std::map<std::filesystem::path, std::shared_ptr<const std::string>> files;
    std::map<std::tuple<std::string, std::filesystem::path, unsigned, double>, FacePtr> faces;
    std::map<std::tuple<char32_t, std::string, double, bool>, FacePtr> fallbacks;

    [[nodiscard]] std::vector<Candidate> own(const std::string& family) const {
        std::vector<Candidate> found;
        for (const project::FontEntry& entry : entries)
            if (entry.family == family)
                found.push_back({folder / entry.file, 0, entry.leastWeight, entry.mostWeight,
                                 entry.slant == project::Slant::Italic, false});
        return found;
    }

    [[nodiscard]] std::vector<Candidate> listed(const std::string& family) const {
        std::vector<Candidate> found;
        FcPattern* pattern = FcPatternCreate();
        FcPatternAddString(pattern, FC_FAMILY, reinterpret_cast<const FcChar8*>(family.c_str()));
        FcPatternAddBool(pattern, FC_SCALABLE, FcTrue);
        FcObjectSet* objects =
            FcObjectSetBuild(FC_FILE, FC_INDEX, FC_WEIGHT, FC_SLANT, FC_WIDTH, FC_VARIABLE, nullptr);
        FcFontSet* set = FcFontList(config, pattern, objects);
        for (int i = 0; set != nullptr && i < set->nfont; ++i) {
            bool usable = false;
            bool variable = false;
            const Candidate candidate = fromPattern(set->fonts[i], usable, variable);
            if (usable) found.push_back(candidate);
        }
        if (set != nullptr) FcFontSetDestroy(set);
        FcObjectSetDestroy(objects);
        FcPatternDestroy(pattern);
        return found;
    }

    /// The system's family for a generic one, such as `serif`.
    [[nodiscard]] std::string systemFamilyFor(const std::string& generic) const {
        FcPattern* pattern = FcPatternCreate();
        FcPatternAddString(pattern, FC_FAMILY, reinterpret_cast<const FcChar8*>(generic.c_str()));
        FcPatternAddBool(pattern, FC_SCALABLE, FcTrue);
        FcConfigSubstitute(config, pattern, FcMatchPattern);
        FcDefaultSubstitute(pattern);
        FcResult result = FcResultNoMatch;
        FcPattern* match = FcFontMatch(config, pattern, &result);
        std::string name;
        FcChar8* family = nullptr;
        if (match != nullptr && FcPatternGetString(match, FC_FAMILY, 0, &family) == FcResultMatch)
            name = reinterpret_cast<const char*>(family);
        if (match != nullptr) FcPatternDestroy(match);
        FcPatternDestroy(pattern);
        return name;
    }

    const std::vector<Candidate>& candidates(const std::string& family) {
        const auto known = families.find(family);
        if (known != families.end()) return known->second;
        std::vector<Candidate> found = own(family);
        if (found.empty()) found = listed(isGenericFamily(family) ? systemFamilyFor(family) : family);
        return families.emplace(family, std::move(found)).first->second;
    }

    FacePtr load(const std::string& family, const Candidate& candidate, double weight) {
        const double served = std::clamp(weight, candidate.least, candidate.most);
        // The key includes the family, because one file may serve a generic family and its own.
        const auto key = std::tuple(family, candidate.file, candidate.index, served);
        const auto known = faces.find(key);
        if (known != faces.end()) return known->second;
        auto& bytes = files[candidate.file];
        if (!bytes) bytes = fontBytes(candidate.file);
        FacePtr face = bytes->empty() ? nullptr : make(family, candidate, served, bytes);
        return faces.emplace(key, std::move(face)).first->second;
    }

    static FacePtr make(const std::string& family, const Candidate& candidate, double weight,
                        const std::shared_ptr<const std::string>& bytes) {
        hb_blob_t* blob = hb_blob_create(bytes->data(), static_cast<unsigned>(bytes->size()),
                                         HB_MEMORY_MODE_READONLY, nullptr, nullptr);
        hb_face_t* hbFace = hb_face_create(blob, candidate.index);
        hb_blob_destroy(blob);
        std::shared_ptr<Face> face(new Face);
        face->family_ = family;
        face->file_ = candidate.file;
        face->index_ = candidate.index;
        face->weight_ = weight;
        face->italic_ = candidate.italic;
        face->minWeight_ = candidate.least;
        face->maxWeight_ = candidate.most;
        face->bytes_ = bytes;
        face->font_ = hb_font_create(hbFace);
        const bool readable = hb_face_get_glyph_count(hbFace) > 0;
        // Finer than font units, because advances of a variable font are not whole numbers of font units.
        face->scale_ = hb_face_get_upem(hbFace) * 64.0;
        hb_font_set_scale(face->font_, static_cast<int>(face->scale_), static_cast<int>(face->scale_));
        if (hb_ot_var_has_data(hbFace)) {
            const hb_variation_t weightAxis{HB_TAG('w', 'g', 'h', 't'), static_cast<float>(weight)};
            hb_font_set_variations(face->font_, &weightAxis, 1);
        }
        const unsigned selection = twoBytes(hbFace, HB_TAG('O', 'S', '/', '2'), 62);
        const unsigned flags = twoBytes(hbFace, HB_TAG('h', 'e', 'a', 'd'), 16);
        face->roundsUp_ = (selection & 0x80U) == 0 && (flags & 0x08U) == 0;
        face->isPostScript_ =
            hasTable(hbFace, HB_TAG('C', 'F', 'F', ' ')) || hasTable(hbFace, HB_TAG('C', 'F', 'F', '2'));
        hb_face_destroy(hbFace);
        if (!readable) return nullptr;
        hb_font_extents_t extents{};
        if (hb_font_get_h_extents(face->font_, &extents)) {
            face->ascent_ = extents.ascender / face->scale_;
            face->descent_ = -extents.descender / face->scale_;
        }
        return face;
    }
};

Fonts::Fonts() : cache_(std::make_unique<Cache>()) {}

Fonts::~Fonts() = default;

void Fonts::use(const std::vector<project::FontEntry>& entries, const std::filesystem::path& folder) {
    if (cache_->entries == entries && cache_->folder == folder) return;
    cache_->entries = entries;
    cache_->folder = folder;
    cache_->families.clear();
    cache_->files.clear();
    cache_->faces.clear();
    cache_->fallbacks.clear();
}

std::vector<FacePtr> Fonts::find(const std::vector<std::string>& families, double weight, bool italic,
                                 std::vector<FontNote>* notes) {
    std::vector<FacePtr> found;
    auto note = [&](const std::string& family, std::string says, std::string missing,
                    bool changesLines = true) {
        if (notes != nullptr) notes->push_back({family, std::move(says), std::move(missing), changesLines});
    };
    auto add = [&](const std::string& family, bool asked) {
        const Candidate* candidate = best(cache_->candidates(family), weight, italic);
        const FacePtr face = candidate != nullptr ? cache_->load(family, *candidate, weight) : nullptr;
        if (!face) {
            // A missing family after one that exists changes nothing that is drawn.
            if (asked && found.empty() && !isGenericFamily(family))
                note(family,
                     candidate != nullptr ? wording::say("%1 cannot be read from its file", {family})
                                          : wording::say("%1 was not found", {family}),
                     //: Add a font file with …
                     wording::say("this family"));
            return;
        }
        const bool first = found.empty();
        found.push_back(face);
        const bool sameSlant = face->italic() == italic;
        if (first && asked && (face->weight() != weight || !sameSlant))
            note(family,
                 wording::say("%1 has no %2; %3 is used",
                              {family, styleOf(weight, italic, sameSlant),
                               styleOf(face->weight(), face->italic(), sameSlant)}),
                 //: Add a font file with …
                 wording::say("this style"), face->weight() != weight || face->italic());
    };
    for (const std::string& family : families)
        add(family, true);
    if (found.empty() || families.empty() || !isGenericFamily(families.back())) add("serif", false);
    return found;
}

FacePtr Fonts::fallback(char32_t character, const std::string& language, double weight, bool italic) {
    const auto key = std::tuple(character, language, weight, italic);
    const auto known = cache_->fallbacks.find(key);
    if (known != cache_->fallbacks.end()) return known->second;
    FcPattern* pattern = FcPatternCreate();
    FcCharSet* set = FcCharSetCreate();
    FcCharSetAddChar(set, character);
    FcPatternAddCharSet(pattern, FC_CHARSET, set);
    FcPatternAddString(pattern, FC_LANG, reinterpret_cast<const FcChar8*>(language.c_str()));
    FcPatternAddBool(pattern, FC_SCALABLE, FcTrue);
    FcPatternAddBool(pattern, FC_COLOR, FcFalse);
    FcPatternAddDouble(pattern, FC_WEIGHT, FcWeightFromOpenTypeDouble(weight));
    FcPatternAddInteger(pattern, FC_SLANT, italic ? FC_SLANT_ITALIC : FC_SLANT_ROMAN);
    FcConfigSubstitute(cache_->config, pattern, FcMatchPattern);
    FcDefaultSubstitute(pattern);
    FcResult result = FcResultNoMatch;
    FcFontSet* sorted = FcFontSort(cache_->config, pattern, FcTrue, nullptr, &result);
    FacePtr face;
    for (int i = 0; sorted != nullptr && !face && i < sorted->nfont; ++i) {
        FcCharSet* has = nullptr;
        if (FcPatternGetCharSet(sorted->fonts[i], FC_CHARSET, 0, &has) != FcResultMatch) continue;
        if (!FcCharSetHasChar(has, character)) continue;
        FcChar8* family = nullptr;
        FcPatternGetString(sorted->fonts[i], FC_FAMILY, 0, &family);
        bool usable = false;
        bool variable = false;
        Candidate candidate = fromPattern(sorted->fonts[i], usable, variable);
        face =
            cache_->load(family != nullptr ? reinterpret_cast<const char*>(family) : "", candidate, weight);
        if (face && !face->has(character)) face = nullptr;
    }
    if (sorted != nullptr) FcFontSetDestroy(sorted);
    FcCharSetDestroy(set);
    FcPatternDestroy(pattern);
    return cache_->fallbacks.emplace(key, std::move(face)).first->second;
}

std::vector<std::string> Fonts::families() const {
    std::set<std::string> names;
    FcPattern* pattern = FcPatternCreate();
    FcPatternAddBool(pattern, FC_SCALABLE, FcTrue);
    FcObjectSet* objects = FcObjectSetBuild(FC_FAMILY, nullptr);
    FcFontSet* set = FcFontList(cache_->config, pattern, objects);
    for (int i = 0; set != nullptr && i < set->nfont; ++i) {
        FcChar8* family = nullptr;
        if (FcPatternGetString(set->fonts[i], FC_FAMILY, 0, &family) == FcResultMatch)
            names.insert(reinterpret_cast<const char*>(family));
    }
    if (set != nullptr) FcFontSetDestroy(set);
    FcObjectSetDestroy(objects);
    FcPatternDestroy(pattern);
    for (const project::FontEntry& entry : cache_->entries)
        names.insert(entry.family);
    return {names.begin(), names.end()};
}

}  // namespace tenter::text
