// Builds paragraphs: copy → text → bidirectional levels, faces, items → glyphs → clusters → break
// opportunities.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "text/paragraph.h"

namespace tenter::text {

/// Builds one `Paragraph` from copy, style, fonts and break profile.
class ParagraphBuilder {
public:
    ParagraphBuilder(const project::Copy& copy, const ShapingStyle& style, Fonts& fonts,
                     const BreakProfile& profile);
    std::shared_ptr<Paragraph> build();
    /// Computes the changes of width at the overflow opportunities of `paragraph`, which this builder built.
    /// Separate from `build`, because each of them needs shaping and few words are ever cut.
    void correctOverflowOpportunities(Paragraph& paragraph) const;

private:
    using Joint = Paragraph::Joint;

    void collectText();
    void applyCase();
    void findLevels();
    void findFaces();
    /// True if the style names the family of `face`; its glyphs are then no fallback.
    [[nodiscard]] bool isNamed(const FacePtr& face) const;
    /// Adds a note that the family lacks `grapheme` and that `face` draws it. The note names the script, so
    /// that there is one note for each script.
    void addLacked(std::vector<FontNote>& notes, std::u16string_view grapheme, const FacePtr& face) const;
    /// The kind of run with the font of code unit `unit`: Plain if its run has the font of plain text.
    [[nodiscard]] project::Run::Kind fontOf(std::size_t unit) const;
    /// The script of each unit of the text.
    [[nodiscard]] std::vector<hb_script_t> findScripts() const;
    void itemise();
    void shape(const Item& item);
    /// The face of the cluster at code unit `unit` of `item`.
    [[nodiscard]] FacePtr faceOfCluster(std::uint32_t unit, const Item& item) const;
    void addClusters(const Item& item, std::uint32_t begin, std::uint32_t end, std::uint32_t firstGlyph,
                     double advance, bool unsafe);
    void shapeBreak(const Item& item);
    void addSums();
    void addOpportunities();
    void addOverflowOpportunities();
    void addHyphen(ShapedRun& run) const;

    /// Index in the copy of the run that holds code unit `unit` of the text.
    [[nodiscard]] std::size_t copyRunOf(std::size_t unit) const { return sources_[unit].run; }
    /// True for a unit at the start or end of a piece of text of one direction and style.
    [[nodiscard]] bool endsPiece(std::uint32_t unit) const;
    [[nodiscard]] bool hasInk(std::uint32_t begin, std::uint32_t end) const;
    [[nodiscard]] FacePtr faceFor(std::u16string_view grapheme, std::size_t copyRun, bool& fallback);
    [[nodiscard]] std::uint16_t runOf(std::size_t unit, const FacePtr& face);
    /// True if a break before cluster `cluster` changes glyphs.
    [[nodiscard]] bool isUnsafe(std::uint32_t cluster) const {
        return made_->joints_[cluster] != Joint::None;
    }
    /// The opportunity before cluster `cluster`, with the change of width that reshaping to that break
    /// causes.
    [[nodiscard]] Opportunity opportunity(std::uint32_t cluster, Opportunity::Kind kind) const;
    void correct(Opportunity& opportunity) const;
    /// True if the end of a line that ends with cluster `last` is visible: text that is not aligned to its
    /// start, underlined, or in a box with a border or a background.
    [[nodiscard]] bool showsEndOf(const Cluster& last) const;
    /// Changes of width in em that a break before cluster `at` causes, if the line is reshaped: of the text
    /// before it, and, if `both`, of the text after it.
    struct Corrections {
        double before = 0, after = 0;
    };
    [[nodiscard]] Corrections correctionsAt(std::uint32_t at, bool both) const;
    /// The last cluster before `cluster` at which a break changes no glyph before `cluster`.
    [[nodiscard]] float insideLigature(std::uint32_t cluster) const;
    [[nodiscard]] std::uint32_t affectedBy(std::uint32_t cluster) const;
    void keepLigature(Opportunity& cut) const;

    const project::Copy& copy_;  // valid until `build` returns
    const ShapingStyle style_;   // a copy, because overflow opportunities are corrected later
    Fonts& fonts_;               // the same
    const BreakProfile& profile_;
    std::shared_ptr<Paragraph> made_ = std::make_shared<Paragraph>();
    std::u16string& text_;
    std::vector<CopyPosition>& sources_;                // for each unit and the end of the text
    std::vector<std::uint8_t> levels_;                  // for each unit
    std::vector<FacePtr> faces_;                        // for each unit
    std::vector<bool> fallback_;                        // for each unit
    BreakMap graphemes_;                                // for each unit, true if a grapheme starts there
    std::vector<std::vector<FacePtr>> facesOfCopyRun_;  // for each run of the copy, its candidate faces
    std::vector<Item>& items_;
    std::vector<std::pair<std::size_t, FacePtr>> runKeys_;
    std::vector<std::uint32_t> itemOf_;         // for each cluster
    std::vector<std::uint32_t> ligatureStart_;  // for each cluster, the first cluster of its ligature
    std::vector<double> exact_;                 // for each cluster, its advance in em
};

}  // namespace tenter::text
