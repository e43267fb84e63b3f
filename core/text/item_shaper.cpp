#include "text/item_shaper.h"

#include <algorithm>
#include <array>
#include <memory>

#include "text/unicode.h"

namespace tenter::text {
namespace {

using Buffer = std::unique_ptr<hb_buffer_t, decltype(&hb_buffer_destroy)>;

bool mayBeHyphenMinus(char16_t unit) {
    return unit == plainHyphen || unit == noBreakHyphen;
}

bool holdsHyphen(const std::u16string& text, std::uint32_t begin, std::uint32_t end) {
    return std::any_of(text.begin() + begin, text.begin() + end, mayBeHyphenMinus);
}

/// `text` with a hyphen-minus for each hyphen that `face` lacks.
std::u16string withHyphenMinus(std::u16string text, const Face& face) {
    for (char16_t& unit : text)
        if (mayBeHyphenMinus(unit) && !face.has(unit)) unit = u'-';
    return text;
}

Buffer shaped(const std::u16string& text, const Item& item, std::uint32_t begin, std::uint32_t end,
              const BreakProfile& profile, const std::string& language, bool ligatures) {
    Buffer buffer(hb_buffer_create(), &hb_buffer_destroy);
    const auto add = [&](const std::u16string& drawn) {
        hb_buffer_add_utf16(buffer.get(), reinterpret_cast<const std::uint16_t*>(drawn.data()),
                            static_cast<int>(drawn.size()), begin, static_cast<int>(end - begin));
    };
    if (profile.drawsHyphenMinus() && holdsHyphen(text, begin, end))
        add(withHyphenMinus(text, *item.face));
    else
        add(text);
    hb_buffer_set_direction(buffer.get(), item.level % 2 != 0 ? HB_DIRECTION_RTL : HB_DIRECTION_LTR);
    hb_buffer_set_script(buffer.get(),
                         item.script == HB_SCRIPT_COMMON ? profile.scriptOfCommon() : item.script);
    hb_buffer_set_language(buffer.get(), hb_language_from_string(language.c_str(), -1));
    std::vector<hb_feature_t> off;
    const auto turnOff = [&](hb_tag_t feature) { off.push_back({feature, 0, 0, static_cast<unsigned>(-1)}); };
    // font-variant-ligatures: none. CSS Fonts 4 § 6.4.
    if (!ligatures)
        for (const hb_tag_t feature :
             {HB_TAG('l', 'i', 'g', 'a'), HB_TAG('c', 'l', 'i', 'g'), HB_TAG('c', 'a', 'l', 't')})
            turnOff(feature);
    std::array<char, 4> script{};
    hb_tag_to_string(hb_script_to_iso15924_tag(item.script), script.data());
    if (!profile.kerns({script.data(), script.size()})) turnOff(HB_TAG('k', 'e', 'r', 'n'));
    hb_shape(item.face->font(), buffer.get(), off.data(), static_cast<unsigned>(off.size()));
    return buffer;
}

}  // namespace

ItemShaper::ItemShaper(const BreakProfile& profile, std::string language, bool ligatures)
    : profile_(&profile), language_(std::move(language)), ligatures_(ligatures) {}

ShapedPiece ItemShaper::shape(const std::u16string& text, const Item& item, std::uint32_t begin,
                              std::uint32_t end) const {
    const Buffer buffer = shaped(text, item, begin, end, *profile_, language_, ligatures_);
    unsigned count = 0;
    const hb_glyph_info_t* infos = hb_buffer_get_glyph_infos(buffer.get(), &count);
    const hb_glyph_position_t* positions = hb_buffer_get_glyph_positions(buffer.get(), &count);
    const double scale = item.face->scale();

    ShapedPiece piece;
    piece.glyphs.reserve(count);
    for (unsigned i = 0; i < count;) {
        ShapedPiece::Span span;
        span.begin = infos[i].cluster;
        span.firstGlyph = i;
        for (; i < count && infos[i].cluster == span.begin; ++i) {
            span.unsafe = span.unsafe ||
                          (hb_glyph_info_get_glyph_flags(&infos[i]) & HB_GLYPH_FLAG_UNSAFE_TO_BREAK) != 0;
            piece.glyphs.push_back({infos[i].codepoint,
                                    static_cast<float>(span.advance + positions[i].x_offset / scale),
                                    static_cast<float>(positions[i].y_offset / scale)});
            span.advance += positions[i].x_advance / scale;
        }
        span.endGlyph = i;
        piece.spans.push_back(span);
    }
    if (item.level % 2 != 0) std::ranges::reverse(piece.spans);
    for (std::size_t s = 0; s < piece.spans.size(); ++s)
        piece.spans[s].end = s + 1 < piece.spans.size() ? piece.spans[s + 1].begin : end;
    return piece;
}

double ItemShaper::advance(const std::u16string& text, const Item& item, std::uint32_t begin,
                           std::uint32_t end) const {
    const Buffer buffer = shaped(text, item, begin, end, *profile_, language_, ligatures_);
    unsigned count = 0;
    const hb_glyph_position_t* positions = hb_buffer_get_glyph_positions(buffer.get(), &count);
    double sum = 0;
    for (unsigned i = 0; i < count; ++i)
        sum += positions[i].x_advance;
    return sum / item.face->scale();
}

}  // namespace tenter::text
