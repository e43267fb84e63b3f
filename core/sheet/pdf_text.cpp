#include "sheet/pdf_text.h"

#include <cairo-ft.h>
#include <hb.h>

#include <algorithm>
#include <mutex>
#include <string>
#include <vector>

#include "draw/text_line.h"
#include "text/embedding.h"
#include "units/number.h"

namespace tenter::sheet {

namespace {

/// FreeType's library is not safe to use on several threads. It stays until the program ends, because Cairo
/// keeps fonts in a cache of its own.
struct SharedLibrary {
    std::mutex mutex;
    FT_Library library = nullptr;
    SharedLibrary() {
        if (FT_Init_FreeType(&library) != 0) library = nullptr;
    }
};
SharedLibrary& sharedLibrary() {
    static auto* const shared = new SharedLibrary;
    return *shared;
}

/// A face of FreeType and the face whose bytes it reads.
struct OwnedFace {
    FT_Face face = nullptr;
    text::FacePtr source;
};

void release(void* data) {
    auto* const owned = static_cast<OwnedFace*>(data);
    const std::lock_guard lock(sharedLibrary().mutex);
    FT_Done_Face(owned->face);
    delete owned;
}

/// The characters that the glyphs of a cluster stand for, with those of the line's clusters without glyphs
/// beside it: of a ligature, the leftmost has the glyph. A no-break space becomes a space, because the two
/// share a glyph, and a glyph of a PDF stands for one text.
std::string textOf(const text::Paragraph& paragraph, const text::Line& line, std::uint32_t cluster,
                   const std::vector<text::ReshapedCluster>& reshaped) {
    const auto& clusters = paragraph.clusters();
    const auto belongs = [&](std::uint32_t index) {
        return clusters[index].visible && clusters[index].run == clusters[cluster].run &&
               draw::glyphsOf(paragraph, clusters[index], draw::find(reshaped, index)).empty();
    };
    std::uint32_t first = cluster;
    std::uint32_t end = cluster + 1;
    if ((clusters[cluster].level & 1U) != 0)
        while (first > line.first && belongs(first - 1))
            --first;
    else
        while (end < line.end && belongs(end))
            ++end;
    std::string text = paragraph.utf8(first, end);
    return text == "\u00A0" || text == "\u202F" ? " " : text;
}

/// True if the glyphs of a PDF's font are those of `face`.
bool canBeEmbedded(const text::Face& face) {
    unsigned count = 0;
    const int* const axes = hb_font_get_var_coords_normalized(face.font(), &count);
    if (std::any_of(axes, axes + count, [](int axis) { return axis != 0; })) return false;
    const text::Embedding allowed = text::embeddingOf(face);
    return allowed != text::Embedding::Restricted && allowed != text::Embedding::BitmapsOnly;
}

text::FacePtr shared(const text::Paragraph& paragraph, const text::Face* face) {
    for (const text::ShapedRun& run : paragraph.runs())
        if (run.face.get() == face) return run.face;
    return nullptr;
}

}  // namespace

/// Cairo's fonts for faces.
struct PdfText::Fonts {
    struct Face {
        cairo_font_face_t* face = nullptr;
        cairo_font_options_t* options = nullptr;
        bool canBeEmbedded = false;
    };
    std::map<text::FacePtr, Face> faces;

    Fonts() = default;
    ~Fonts() {
        for (auto& [key, face] : faces) {
            if (face.face != nullptr) cairo_font_face_destroy(face.face);
            if (face.options != nullptr) cairo_font_options_destroy(face.options);
        }
    }
    Fonts(const Fonts&) = delete;
    Fonts& operator=(const Fonts&) = delete;

    const Face* of(const text::FacePtr& face) {
        const auto [kept, isNew] = faces.try_emplace(face);
        Face& made = kept->second;
        if (!isNew) return made.face != nullptr ? &made : nullptr;
        auto owned = std::make_unique<OwnedFace>();
        owned->source = face;
        {
            SharedLibrary& shared = sharedLibrary();
            const std::lock_guard lock(shared.mutex);
            const std::string& bytes = face->bytes();
            if (shared.library == nullptr ||
                FT_New_Memory_Face(shared.library, reinterpret_cast<const FT_Byte*>(bytes.data()),
                                   static_cast<FT_Long>(bytes.size()), static_cast<FT_Long>(face->index()),
                                   &owned->face) != 0)
                return nullptr;
        }
        made.face =
            cairo_ft_font_face_create_for_ft_face(owned->face, FT_LOAD_NO_HINTING | FT_LOAD_NO_BITMAP);
        static const cairo_user_data_key_t ownership{};
        if (cairo_font_face_set_user_data(made.face, &ownership, owned.get(), release) ==
            CAIRO_STATUS_SUCCESS)
            static_cast<void>(owned.release());
        made.canBeEmbedded = canBeEmbedded(*face);
        made.options = cairo_font_options_create();
        cairo_font_options_set_hint_style(made.options, CAIRO_HINT_STYLE_NONE);
        cairo_font_options_set_hint_metrics(made.options, CAIRO_HINT_METRICS_OFF);
        if (face->minWeight() < face->maxWeight()) {
            const std::string axis = "wght=" + units::number(face->weight(), 0);
            cairo_font_options_set_variations(made.options, axis.c_str());
        }
        return &made;
    }
};

/// Clusters beside each other in one face and one direction, from left to right.
struct PdfText::Run {
    struct Cluster {
        std::string text;
        int glyphs = 0;
    };
    text::FacePtr face;
    bool rightToLeft = false;
    std::vector<cairo_glyph_t> glyphs;
    std::vector<Cluster> clusters;
};

PdfText::PdfText() : fonts_(std::make_unique<Fonts>()) {}
PdfText::~PdfText() = default;

void PdfText::showRun(cairo_t* context, const Run& run, double size) {
    const Fonts::Face* const face = run.face ? fonts_->of(run.face) : nullptr;
    if (face == nullptr || run.glyphs.empty()) return;
    cairo_set_font_face(context, face->face);
    cairo_set_font_options(context, face->options);
    cairo_set_font_size(context, size);
    // Characters are in reading order, glyphs from left to right.
    std::vector<Run::Cluster> reading = run.clusters;
    if (run.rightToLeft) std::ranges::reverse(reading);
    std::string text;
    std::vector<cairo_text_cluster_t> clusters;
    clusters.reserve(reading.size());
    for (const Run::Cluster& cluster : reading) {
        text += cluster.text;
        clusters.push_back({static_cast<int>(cluster.text.size()), cluster.glyphs});
    }
    cairo_show_text_glyphs(
        context, text.data(), static_cast<int>(text.size()), run.glyphs.data(),
        static_cast<int>(run.glyphs.size()), clusters.data(), static_cast<int>(clusters.size()),
        run.rightToLeft ? CAIRO_TEXT_CLUSTER_FLAG_BACKWARD : static_cast<cairo_text_cluster_flags_t>(0));
}

void PdfText::showLine(cairo_t* context, const draw::TextBlock& block, std::size_t index, double x,
                       double y) {
    const layout::LaidPart& part = block.part();
    const layout::LaidLine& line = block.lines()[index];
    const text::Paragraph& paragraph = *part.paragraph;
    const double baseline = y + line.baseline;
    std::vector<Run> runs;
    const std::vector<text::ReshapedCluster> reshaped = paragraph.reshaped(line.line.first, line.line.end);
    struct Visitor {
        const text::Paragraph& paragraph;
        const text::Line& line;
        const std::vector<text::ReshapedCluster>& reshaped;
        std::vector<Run>& runs;
        double baseline, size;
        std::uint32_t at = 0;
        bool isNew = true;

        void cluster(std::uint32_t cluster, double, double) {
            at = cluster;
            isNew = true;
        }
        void glyph(std::uint16_t run, const text::Glyph& glyph, double from) {
            const text::FacePtr& face = paragraph.runs()[run].face;
            const bool rightToLeft = (paragraph.clusters()[at].level & 1U) != 0;
            if (runs.empty() || runs.back().face != face || runs.back().rightToLeft != rightToLeft)
                runs.push_back({face, rightToLeft, {}, {}});
            if (isNew) runs.back().clusters.push_back({textOf(paragraph, line, at, reshaped), 0});
            isNew = false;
            ++runs.back().clusters.back().glyphs;
            runs.back().glyphs.push_back({glyph.id, from, baseline - glyph.y * size});
        }
        void hyphen(std::uint16_t, const text::Glyph&, double) {}
    };
    std::vector<std::uint32_t> order;
    draw::walkLine(part, line, reshaped, 1, x + line.x, order,
                   Visitor{paragraph, line.line, reshaped, runs, baseline, part.glyphSize});
    if (line.line.next > line.line.end && !runs.empty() && !paragraph.rightToLeft()) {
        const text::Cluster& space = paragraph.clusters()[line.line.end];
        if (space.glyphCount == 1 && paragraph.runs()[space.run].face == runs.back().face) {
            runs.back().clusters.push_back({" ", 1});
            runs.back().glyphs.push_back(
                {paragraph.glyphs()[space.firstGlyph].id, x + line.x + line.line.width, baseline});
        }
    }
    draw::setColour(context, block.style().colour);
    for (const Run& run : runs)
        showRun(context, run, part.glyphSize);
}

void PdfText::show(cairo_t* context, const draw::TextBlock& block, double x, double y) {
    for (std::size_t i = 0; i < block.lines().size(); ++i)
        showLine(context, block, i, x, y);
}

bool PdfText::show(cairo_t* context, const text::Paragraph& paragraph, const draw::LineInk& ink) {
    std::vector<Run> runs;
    std::uint32_t last = 0;
    for (const draw::PlacedGlyph& glyph : ink.glyphs) {
        if (glyph.leaning) return false;
        const bool rightToLeft = (paragraph.clusters()[glyph.cluster].level & 1U) != 0;
        if (runs.empty() || runs.back().face.get() != glyph.face || runs.back().rightToLeft != rightToLeft) {
            const text::FacePtr owner = shared(paragraph, glyph.face);
            const Fonts::Face* const face = owner ? fonts_->of(owner) : nullptr;
            if (face == nullptr || !face->canBeEmbedded) return false;
            runs.push_back({owner, rightToLeft, {}, {}});
        }
        Run& run = runs.back();
        if (run.clusters.empty() || glyph.cluster != last)
            run.clusters.push_back({textOf(paragraph, ink.line, glyph.cluster, ink.reshaped), 0});
        last = glyph.cluster;
        ++run.clusters.back().glyphs;
        run.glyphs.push_back({glyph.id, glyph.x, glyph.y});
    }
    for (const Run& run : runs)
        showRun(context, run, ink.size);
    return true;
}

}  // namespace tenter::sheet
