#include "row/glyphs.h"

#include <algorithm>
#include <cmath>

#include "draw/text_line.h"

namespace tenter::desktop::row {

namespace {

constexpr std::size_t mostBytes = 12U << 20U;
constexpr double mostSize = 2000;  // device px; larger glyphs do not fit on a screen

/// FreeType's state is not safe to use on several threads, so each has its own.
FT_Library library() {
    struct Library {
        Library() {
            if (FT_Init_FreeType(&made) != 0) made = nullptr;
        }
        ~Library() {
            if (made != nullptr) FT_Done_FreeType(made);
        }
        Library(const Library&) = delete;
        Library& operator=(const Library&) = delete;
        FT_Library made = nullptr;
    };
    static thread_local const Library ofThread;
    return ofThread.made;
}

}  // namespace

SizedFace::SizedFace(Outlines& outlines, double size, bool leaning)
    : outlines_(outlines), size_(std::min(size, mostSize)), leaning_(leaning) {}

const Coverage& SizedFace::of(std::uint32_t glyph, unsigned phase) {
    const std::size_t page = glyph / glyphsPerPage;
    if (page >= pages_.size()) pages_.resize(page + 1);
    if (!pages_[page]) {
        pages_[page] = std::make_unique<Page>();
        pages_[page]->fill(absent);
    }
    std::uint32_t& slot = (*pages_[page])[(glyph % glyphsPerPage) * phases + phase];
    if (slot == absent) slot = rasterise(glyph, phase);
    return coverages_[slot];
}

std::uint32_t SizedFace::rasterise(std::uint32_t glyph, unsigned phase) {
    const auto index = static_cast<std::uint32_t>(coverages_.size());
    coverages_.emplace_back();
    const Outline& outline = outlines_.of(glyph);
    if (outline.points.empty() || outline.contours.empty() || library() == nullptr) return index;

    const double factor = size_ * 64 / outlines_.face().scale();  // to 26.6 device px
    const double lean = leaning_ ? draw::obliqueSkew : 0;
    const double shift = phase * 64.0 / phases;
    std::vector<FT_Vector> points;
    points.reserve(outline.points.size());
    for (const FT_Vector& point : outline.points) {
        const auto x = static_cast<double>(point.x);
        const auto y = static_cast<double>(point.y);
        points.push_back({std::lround((x + lean * y) * factor + shift), std::lround(y * factor)});
    }
    FT_Outline scaled{};
    scaled.n_points = static_cast<short>(points.size());
    scaled.n_contours = static_cast<short>(outline.contours.size());
    scaled.points = points.data();
    scaled.tags =
        const_cast<char*>(outline.tags.data());  // not written; FreeType's struct is not const-correct
    scaled.contours = const_cast<short*>(outline.contours.data());

    FT_BBox box;
    FT_Outline_Get_CBox(&scaled, &box);
    const long left = box.xMin >> 6;
    const long bottom = box.yMin >> 6;
    const long width = ((box.xMax + 63) >> 6) - left;
    const long height = ((box.yMax + 63) >> 6) - bottom;
    if (width <= 0 || height <= 0 || width > 4096 || height > 4096) return index;
    FT_Outline_Translate(&scaled, -left * 64, -bottom * 64);

    Coverage& coverage = coverages_[index];
    coverage.left = static_cast<std::int16_t>(left);
    coverage.top = static_cast<std::int16_t>(bottom + height);
    coverage.width = static_cast<std::uint16_t>(width);
    coverage.height = static_cast<std::uint16_t>(height);
    coverage.offset = static_cast<std::uint32_t>(pool_.size());
    pool_.resize(pool_.size() + static_cast<std::size_t>(width * height));
    FT_Bitmap bitmap{};
    bitmap.rows = static_cast<unsigned>(height);
    bitmap.width = static_cast<unsigned>(width);
    bitmap.pitch = static_cast<int>(width);
    bitmap.buffer = pool_.data() + coverage.offset;
    bitmap.num_grays = 256;
    bitmap.pixel_mode = FT_PIXEL_MODE_GRAY;
    FT_Outline_Get_Bitmap(library(), &scaled, &bitmap);
    return index;
}

SizedFace& Glyphs::sized(const text::FacePtr& face, double size, bool leaning) {
    const Key key{face.get(), std::lround(size * sizesPerPixel), leaning};
    if (const auto found = kept_.find(key); found != kept_.end()) {
        uses_.splice(uses_.begin(), uses_, found->second.use);
        return *found->second.face;
    }
    std::unique_ptr<Outlines>& outlines = outlines_[face.get()];
    if (!outlines) outlines = std::make_unique<Outlines>(face);
    uses_.push_front(key);
    const double grid = static_cast<double>(std::get<1>(key)) / sizesPerPixel;
    Kept& kept = kept_[key];
    kept.face = std::make_unique<SizedFace>(*outlines, grid, leaning);
    kept.use = uses_.begin();
    return *kept.face;
}

void Glyphs::trim() {
    std::size_t bytes = 0;
    for (const auto& [key, kept] : kept_)
        bytes += kept.face->bytes();
    while (bytes > mostBytes && uses_.size() > 1) {
        const auto last = kept_.find(uses_.back());
        bytes -= last->second.face->bytes();
        kept_.erase(last);
        uses_.pop_back();
    }
}

void Glyphs::clear() {
    kept_.clear();
    uses_.clear();
    outlines_.clear();
}

}  // namespace tenter::desktop::row
