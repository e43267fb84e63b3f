#include "text/builder.h"

#include <hb.h>
#include <unicode/ubidi.h>
#include <unicode/uchar.h>

#include <algorithm>
#include <array>
#include <span>

#include "text/font_weight.h"
#include "text/generic_families.h"
#include "text/scripts.h"
#include "text/unicode.h"
#include "wording/say.h"

namespace tenter::text {
namespace {

constexpr char16_t lineFeed = u'\n';
constexpr char16_t softHyphen = u'\u00AD';
/// U+3000. At a line's end it does not count for fit, in Chromium 156 and Firefox 153. CSS Text 3 § 4.1.2.
constexpr char16_t ideographicSpace = u'\u3000';

bool isWhite(char16_t unit) {
    return unit == u' ' || unit == u'\t' || unit == u'\n' || unit == u'\r';
}

bool isIgnorable(char32_t character) {
    return u_hasBinaryProperty(static_cast<UChar32>(character), UCHAR_DEFAULT_IGNORABLE_CODE_POINT) != 0;
}

/// True for a space that HarfBuzz makes from U+0020 if the face lacks it.
bool isMadeSpace(char32_t character) {
    return (character >= 0x2000 && character <= 0x200A) || character == 0x202F || character == 0x205F ||
           character == ideographicSpace;
}

}  // namespace

ParagraphBuilder::ParagraphBuilder(const project::Copy& copy, const ShapingStyle& style, Fonts& fonts,
                                   const BreakProfile& profile)
    : copy_(copy),
      style_(style),
      fonts_(fonts),
      profile_(profile),
      text_(made_->text_),
      sources_(made_->sources_),
      items_(made_->items_) {
    made_->shaper_ = ItemShaper(profile, style_.language, style_.ligatures);
}

std::shared_ptr<Paragraph> ParagraphBuilder::build() {
    made_->rightToLeft_ = style_.rightToLeft;
    made_->reshapesAtBreaks_ = profile_.reshapesAtBreaks();
    made_->spacesMinContent_ = profile_.spacesMinContent();
    made_->reservesHyphen_ = profile_.reservesHyphen();
    collectText();
    applyCase();
    findLevels();
    findFaces();
    itemise();
    for (const Item& item : items_)
        item.face ? shape(item) : shapeBreak(item);
    addSums();
    addOpportunities();
    std::shared_ptr<Paragraph> made = made_;
    // From here on the paragraph owns its builder (Paragraph::prepare), so the builder must not own the
    // paragraph.
    made_ = std::shared_ptr<Paragraph>(std::shared_ptr<void>(), made.get());
    return made;
}

// White space collapses across runs, and is removed next to a forced break and at both ends of the paragraph.
// CSS Text 3 § 4.1.
void ParagraphBuilder::collectText() {
    const auto add = [this](char16_t unit, std::size_t run, std::size_t at) {
        text_.push_back(unit);
        sources_.push_back({static_cast<std::uint32_t>(run), static_cast<std::uint32_t>(at)});
    };
    const auto dropLastSpace = [this] {
        if (text_.empty() || text_.back() != u' ') return;
        text_.pop_back();
        sources_.pop_back();
    };
    std::size_t lastRunSize = 0;
    for (std::size_t run = 0; run < copy_.size(); ++run) {
        if (copy_[run].kind == project::Run::Kind::Break) {
            dropLastSpace();
            add(lineFeed, run, 0);
            lastRunSize = 0;
            continue;
        }
        const std::u16string piece = toUtf16(copy_[run].text);
        lastRunSize = piece.size();
        for (std::size_t i = 0; i < piece.size(); ++i) {
            if (!isWhite(piece[i])) {
                add(piece[i], run, i);
                continue;
            }
            bool feed = false;
            std::size_t last = i;
            for (; last < piece.size() && isWhite(piece[last]); ++last)
                feed = feed || piece[last] == u'\n';
            const bool dropped = feed && profile_.dropsLineFeedBetweenIdeographs() && i > 0 &&
                                 last < piece.size() && isIdeographic(piece[i - 1]) &&
                                 isIdeographic(codePointAt(piece, last));
            const bool redundant = text_.empty() || text_.back() == u' ' || text_.back() == lineFeed;
            if (!dropped && !redundant) add(u' ', run, i);
            i = last - 1;
        }
    }
    dropLastSpace();
    sources_.push_back({static_cast<std::uint32_t>(copy_.empty() ? 0 : copy_.size() - 1),
                        static_cast<std::uint32_t>(lastRunSize)});
}

void ParagraphBuilder::applyCase() {
    if (style_.letterCase == project::LetterCase::None || text_.empty()) return;
    const CaseEdits edits = style_.letterCase == project::LetterCase::Uppercase
                                ? profile_.uppercase(text_, style_.language)
                                : profile_.capitalize(text_, style_.language);
    std::u16string text;
    std::vector<CopyPosition> sources;
    std::uint32_t at = 0;
    const auto keepTo = [&](std::size_t end) {
        text.append(text_, at, end - at);
        sources.insert(sources.end(), sources_.begin() + at, sources_.begin() + static_cast<long>(end));
    };
    for (const CaseEdit& edit : edits) {
        keepTo(edit.begin);
        text += edit.by;
        for (std::size_t i = 0; i < edit.by.size(); ++i)
            sources.push_back(sources_[edit.begin + (edit.by.size() == edit.length ? i : 0)]);
        at = edit.begin + edit.length;
    }
    keepTo(text_.size());
    sources.push_back(sources_.back());
    text_ = std::move(text);
    sources_ = std::move(sources);
}

void ParagraphBuilder::findLevels() {
    levels_.assign(text_.size(), style_.rightToLeft ? 1 : 0);
    const bool simple = !style_.rightToLeft && std::all_of(text_.begin(), text_.end(), [](char16_t unit) {
        return unit < 0x0590;  // no script below is written from right to left
    });
    if (simple || text_.empty()) return;
    UErrorCode status = U_ZERO_ERROR;
    UBiDi* bidi = ubidi_openSized(static_cast<int>(text_.size()), 0, &status);
    if (bidi == nullptr) return;
    ubidi_setPara(bidi, text_.data(), static_cast<int>(text_.size()), style_.rightToLeft ? 1 : 0, nullptr,
                  &status);
    if (U_SUCCESS(status)) {
        const UBiDiLevel* levels = ubidi_getLevels(bidi, &status);
        if (levels != nullptr && U_SUCCESS(status)) levels_.assign(levels, levels + text_.size());
    }
    ubidi_close(bidi);
}

FacePtr ParagraphBuilder::faceFor(std::u16string_view grapheme, std::size_t copyRun, bool& fallback) {
    const std::vector<FacePtr>& faces = facesOfCopyRun_[copyRun];
    char32_t lacking = 0;
    for (const FacePtr& face : faces) {
        bool all = true;
        for (std::size_t i = 0; all && i < grapheme.size();) {
            const char32_t character = codePointAt(grapheme, i);
            all = isIgnorable(character) || face->has(character) ||
                  // If the face lacks a no-break space, engines draw its space instead, as HarfBuzz does.
                  (character == noBreakSpace && face->has(U' ')) ||
                  // The same with a no-break hyphen and the hyphen.
                  (character == noBreakHyphen && face->has(plainHyphen)) ||
                  (profile_.drawsHyphenMinus() && (character == plainHyphen || character == noBreakHyphen) &&
                   face->has(U'-')) ||
                  (profile_.composes() && face->composes(character)) ||
                  (profile_.makesSpaces() && isMadeSpace(character) && face->has(U' '));
            if (!all && lacking == 0) lacking = character;
            i += unitsOf(character);
        }
        fallback = !faces.empty() && face != faces.front();
        if (all) return face;
    }
    fallback = true;
    const bool italic = copy_[copyRun].kind == project::Run::Kind::Emphasis || style_.italic;
    FacePtr face = fonts_.fallback(lacking, style_.language, style_.weight, italic);
    if (face) return face;
    return faces.empty() ? nullptr : faces.front();
}

void ParagraphBuilder::findFaces() {
    const std::vector<FacePtr> own = fonts_.find(style_.family, style_.weight, style_.italic);
    if (!own.empty()) made_->strut_ = own.front();
    std::vector<std::vector<FontNote>> notesOfCopyRun(copy_.size());
    for (std::size_t i = 0; i < copy_.size(); ++i) {
        const project::Run& run = copy_[i];
        const bool strong = run.kind == project::Run::Kind::Strong;
        const bool italic = style_.italic || run.kind == project::Run::Kind::Emphasis;
        facesOfCopyRun_.push_back(fonts_.find(style_.family, strong ? bolder(style_.weight) : style_.weight,
                                              italic, &notesOfCopyRun[i]));
    }
    faces_.resize(text_.size());
    fallback_.resize(text_.size());
    graphemes_ = icuGraphemes(text_);
    std::vector<FontNote> lacked;
    std::vector<char> drawsFirst(copy_.size(), 0);  // 1 if the first family draws any of the copy run
    for (std::size_t begin = 0; begin < text_.size();) {
        std::size_t end = begin + 1;
        while (end < text_.size() && !graphemes_[end] && copyRunOf(end) == copyRunOf(begin))
            ++end;
        if (text_[begin] != lineFeed) {
            bool fallback = false;
            const std::u16string_view grapheme = std::u16string_view(text_).substr(begin, end - begin);
            FacePtr face = faceFor(grapheme, copyRunOf(begin), fallback);
            // As if it were not in the text.
            const bool unshaped = text_[begin] == softHyphen && !profile_.shapesSoftHyphens();
            if (unshaped && begin > 0 && copyRunOf(begin - 1) == copyRunOf(begin)) face = faces_[begin - 1];
            for (std::size_t i = begin; i < end; ++i) {
                faces_[i] = face;
                fallback_[i] = fallback;
            }
            const std::vector<FacePtr>& faces = facesOfCopyRun_[copyRunOf(begin)];
            const bool blank = text_[begin] == u' ' || text_[begin] == u'\u00A0';
            if (!blank && !faces.empty() && face == faces.front()) drawsFirst[copyRunOf(begin)] = 1;
            if (fallback && !isNamed(face)) addLacked(lacked, grapheme, face);
        }
        begin = end;
    }
    for (std::size_t i = 0; i < copy_.size(); ++i)
        for (FontNote& note : notesOfCopyRun[i]) {
            const std::vector<FacePtr>& faces = facesOfCopyRun_[i];
            // A missing weight or style does not matter if no glyph uses it.
            if (drawsFirst[i] == 0 && !faces.empty() && note.family == faces.front()->family()) continue;
            if (std::ranges::find(made_->notes_, note) == made_->notes_.end())
                made_->notes_.push_back(std::move(note));
        }
    made_->notes_.insert(made_->notes_.end(), lacked.begin(), lacked.end());
}

bool ParagraphBuilder::isNamed(const FacePtr& face) const {
    return face && !isGenericFamily(face->family()) &&
           std::ranges::find(style_.family, face->family()) != style_.family.end();
}

void ParagraphBuilder::addLacked(std::vector<FontNote>& notes, std::u16string_view grapheme,
                                 const FacePtr& face) const {
    const std::string script = scriptOf(codePointAt(grapheme, 0));
    const std::string family =
        style_.family.empty() ? wording::say("the default family") : style_.family.front();
    const std::string sign = toUtf8(grapheme);
    const auto says = [&] {
        if (script.empty())
            return face ? wording::say("%1 has no “%2”; the fallback font “%3” is used for it",
                                       {family, sign, face->family()})
                        : wording::say("%1 has no “%2”; no installed font has it", {family, sign});
        return face ? wording::say("%1 has no %2 characters; the fallback font “%3” is used for them",
                                   {family, script, face->family()})
                    : wording::say("%1 has no %2 characters; no installed font has them", {family, script});
    };
    //: Add a font file with …
    const FontNote note{family, says(), wording::say("these characters")};
    if (std::ranges::find(notes, note) == notes.end()) notes.push_back(note);
}

// A link has the font of plain text; so have emphasis in italics and strong text in the heaviest weight.
project::Run::Kind ParagraphBuilder::fontOf(std::size_t unit) const {
    using Kind = project::Run::Kind;
    const Kind kind = copy_[copyRunOf(unit)].kind;
    const bool same = kind == Kind::Link || (kind == Kind::Emphasis && style_.italic) ||
                      (kind == Kind::Strong && bolder(style_.weight) == style_.weight);
    return same ? Kind::Plain : kind;
}

std::vector<hb_script_t> ParagraphBuilder::findScripts() const {
    if (!profile_.resolvesScriptsByPiece()) return scriptsOf(text_);
    std::vector<char> beyondLatin1(copy_.size(), 0);  // 1 if the copy run has a character beyond Latin-1
    for (std::size_t i = 0; i < text_.size(); ++i)
        if (text_[i] > 0xFF) beyondLatin1[copyRunOf(i)] = 1;
    std::vector<hb_script_t> scripts;
    for (std::size_t begin = 0; begin < text_.size();) {
        std::size_t end = begin + 1;
        while (end < text_.size() && levels_[end] == levels_[begin] && fontOf(end) == fontOf(begin))
            ++end;
        auto piece = scriptsOf(std::u16string_view(text_).substr(begin, end - begin));
        // In a text with characters beyond Latin-1, a piece without any script has that of the language:
        // measured in Firefox 153, where the last full stop of `أبدًا.` has in Amiri, in a paragraph from left
        // to right, the width of an Arabic one, and of a Latin one if `lang` is `en`.
        const auto runs =
            std::span(beyondLatin1).subspan(copyRunOf(begin), copyRunOf(end - 1) - copyRunOf(begin) + 1);
        if (piece.front() == HB_SCRIPT_COMMON && std::ranges::find(runs, 1) != runs.end())
            std::ranges::fill(piece, scriptOfLanguage(style_.language));
        scripts.insert(scripts.end(), piece.begin(), piece.end());
        begin = end;
    }
    return scripts;
}

void ParagraphBuilder::itemise() {
    const std::vector<hb_script_t> scripts = findScripts();
    for (std::uint32_t i = 0; i < text_.size(); ++i) {
        const FacePtr face = text_[i] == lineFeed ? nullptr : faces_[i];
        const bool apart =
            !profile_.shapesAcross(text_[i]) || (i > 0 && !profile_.shapesAcross(text_[i - 1]));
        // Nothing is kerned with text in another style, even if the family has one face for both.
        const bool joins = !items_.empty() && face && !apart && items_.back().face == face &&
                           fontOf(i) == fontOf(i - 1) && items_.back().level == levels_[i] &&
                           items_.back().script == scripts[i];
        if (joins)
            items_.back().end = i + 1;
        else
            items_.push_back({i, i + 1, face, levels_[i], scripts[i]});
    }
}

std::uint16_t ParagraphBuilder::runOf(std::size_t unit, const FacePtr& face) {
    const std::pair<std::size_t, FacePtr> wanted{copyRunOf(unit), face};
    const auto known = std::find(runKeys_.begin(), runKeys_.end(), wanted);
    if (known != runKeys_.end()) return static_cast<std::uint16_t>(known - runKeys_.begin());
    runKeys_.push_back(wanted);
    const project::Run& run = copy_[copyRunOf(unit)];
    const std::vector<FacePtr>& faces = facesOfCopyRun_[copyRunOf(unit)];
    const FacePtr strut = faces.empty() ? nullptr : faces.front();
    ShapedRun made{face, run.kind, run.to, static_cast<bool>(fallback_[unit]), strut, {}, 0};
    addHyphen(made);
    made_->runs_.push_back(std::move(made));
    made_->unlikeStruts_ = made_->unlikeStruts_ || strut != made_->strut_;
    return static_cast<std::uint16_t>(runKeys_.size() - 1);
}

void ParagraphBuilder::shape(const Item& item) {
    const ShapedPiece piece = made_->shaper_.shape(text_, item, item.begin, item.end);
    for (const ShapedPiece::Span& span : piece.spans) {
        const auto firstGlyph = static_cast<std::uint32_t>(made_->glyphs_.size());
        if (hasInk(span.begin, span.end))
            made_->glyphs_.insert(made_->glyphs_.end(), piece.glyphs.begin() + span.firstGlyph,
                                  piece.glyphs.begin() + span.endGlyph);
        addClusters(item, span.begin, span.end, firstGlyph, span.advance, span.unsafe);
    }
}

bool ParagraphBuilder::hasInk(std::uint32_t begin, std::uint32_t end) const {
    for (std::uint32_t i = begin; i < end; ++i)
        if (!isIgnorable(codePointAt(text_, i))) return true;
    return false;
}

// Firefox 153 adds letter spacing after a zero-width space or word joiner there, as before Latin letters in
// Arabic text, and nowhere else.
bool ParagraphBuilder::endsPiece(std::uint32_t unit) const {
    const auto isApart = [&](std::uint32_t one, std::uint32_t next) {
        return levels_[one] != levels_[next] || fontOf(one) != fontOf(next);
    };
    return unit == 0 || unit + 1 == text_.size() || isApart(unit - 1, unit) || isApart(unit, unit + 1);
}

// The hyphen that is drawn at a soft hyphen is of the first face of the family list.
FacePtr ParagraphBuilder::faceOfCluster(std::uint32_t unit, const Item& item) const {
    const std::vector<FacePtr>& faces = facesOfCopyRun_[copyRunOf(unit)];
    return text_[unit] == softHyphen && !faces.empty() ? faces.front() : item.face;
}

// Each HarfBuzz cluster becomes one cluster. A ligature becomes one for each of its graphemes, with an equal
// share of the advance, because a line may break inside it, such as at a soft hyphen. CSS Fonts 4 leaves the
// shares to the engine; Chromium and Firefox both use equal ones.
void ParagraphBuilder::addClusters(const Item& item, std::uint32_t begin, std::uint32_t end,
                                   std::uint32_t firstGlyph, double advance, bool unsafe) {
    std::vector<std::uint32_t> starts{begin};
    for (std::uint32_t i = begin + 1; i < end; ++i)
        if (graphemes_[i]) starts.push_back(i);
    starts.push_back(end);
    std::size_t inked = 0;
    for (std::size_t i = 0; i + 1 < starts.size(); ++i)
        inked += hasInk(starts[i], starts[i + 1]) ? 1 : 0;
    // An engine that does not reshape at breaks keeps a ligature across a soft hyphen whole, before the break
    // (Firefox 153).
    const std::u16string_view spanned = std::u16string_view(text_).substr(begin, end - begin);
    const bool undivided =
        !profile_.reshapesAtBreaks() && spanned.find(softHyphen) != std::u16string_view::npos;
    const auto glyphs = static_cast<std::uint32_t>(made_->glyphs_.size());
    const bool rightToLeft = item.level % 2 != 0;
    for (std::size_t i = 0; i + 1 < starts.size(); ++i) {
        // The glyphs belong to the leftmost share, because their positions are relative to its left edge.
        const bool last = i + 2 == starts.size();
        const bool leftmost = rightToLeft ? last : i == 0;
        Cluster cluster;
        cluster.begin = starts[i];
        cluster.firstGlyph = leftmost ? firstGlyph : glyphs;
        cluster.glyphCount = static_cast<std::uint16_t>(leftmost ? glyphs - firstGlyph : 0);
        cluster.run =
            runOf(text_[starts[i]] == softHyphen ? starts[i] : begin, faceOfCluster(starts[i], item));
        cluster.level = item.level;
        cluster.space = text_[starts[i]] == u' ';
        cluster.wordUnits = text_[starts[i]] == u' ' || text_[starts[i]] == noBreakSpace ? 1 : 0;
        cluster.visible = hasInk(starts[i], starts[i + 1]);
        const bool counted = profile_.spacesGraphemes() ? graphemes_[starts[i]] && last : i == 0;
        const bool spaced =
            cluster.visible && counted && profile_.spacesAfter(codePointAt(text_, starts[i]), item.script);
        const bool ends =
            !cluster.visible && !profile_.shapesAcross(text_[starts[i]]) && endsPiece(starts[i]);
        cluster.letterUnits = spaced || ends ? 1 : 0;
        double share = 0;
        if (inked == 0)
            share = advance / static_cast<double>(starts.size() - 1);
        else if (undivided)
            share = i == 0 ? advance : 0;
        else if (cluster.visible)
            share = advance / static_cast<double>(inked);
        cluster.advance = static_cast<float>(share);
        made_->clusters_.push_back(cluster);
        exact_.push_back(share);
        const Joint first = unsafe ? Joint::Shaped : Joint::None;
        made_->joints_.push_back(i > 0 ? Joint::Ligature : first);
        itemOf_.push_back(static_cast<std::uint32_t>(&item - items_.data()));
        ligatureStart_.push_back(static_cast<std::uint32_t>(made_->clusters_.size() - 1 - i));
    }
}

void ParagraphBuilder::shapeBreak(const Item& item) {
    Cluster cluster;
    cluster.begin = item.begin;
    cluster.level = item.level;
    cluster.visible = false;
    cluster.firstGlyph = static_cast<std::uint32_t>(made_->glyphs_.size());
    cluster.run = runOf(item.begin, nullptr);
    made_->clusters_.push_back(cluster);
    exact_.push_back(0);
    made_->joints_.push_back(Joint::None);
    itemOf_.push_back(static_cast<std::uint32_t>(&item - items_.data()));
    ligatureStart_.push_back(static_cast<std::uint32_t>(made_->clusters_.size() - 1));
}

void ParagraphBuilder::addSums() {
    const std::vector<Cluster>& clusters = made_->clusters_;
    double ems = 0;
    std::uint32_t letters = 0;
    std::uint32_t words = 0;
    std::uint32_t counted = 0;
    std::uint32_t unit = 0;
    for (std::size_t i = 0; i <= clusters.size(); ++i) {
        made_->ems_.push_back(ems);
        made_->letters_.push_back(letters);
        made_->words_.push_back(words);
        made_->graphemes_.push_back(counted);
        if (i == clusters.size()) break;
        ems += exact_[i];
        letters += clusters[i].letterUnits;
        words += clusters[i].wordUnits;
        const std::size_t end = i + 1 < clusters.size() ? clusters[i + 1].begin : text_.size();
        for (; unit < end; ++unit)
            counted += graphemes_[unit] ? 1 : 0;
    }
}

void ParagraphBuilder::addHyphen(ShapedRun& run) const {
    if (!run.face || text_.find(softHyphen) == std::u16string::npos) return;
    hb_codepoint_t glyph = 0;
    hb_font_t* font = run.face->font();
    if (hb_font_get_nominal_glyph(font, 0x2010, &glyph) == 0) hb_font_get_nominal_glyph(font, '-', &glyph);
    run.hyphen.id = glyph;
    run.hyphenAdvance = static_cast<float>(hb_font_get_glyph_h_advance(font, glyph) / run.face->scale());
}

Opportunity ParagraphBuilder::opportunity(std::uint32_t cluster, Opportunity::Kind kind) const {
    Opportunity made;
    made.cluster = cluster;
    made.lineEnd = cluster;
    made.kind = kind;
    if (kind == Opportunity::Kind::Forced && made.lineEnd > 0 &&
        made_->clusters_[made.lineEnd - 1].glyphCount == 0 &&
        text_[made_->clusters_[made.lineEnd - 1].begin] == lineFeed)
        --made.lineEnd;
    const auto hangs = [&](const Cluster& last) {
        return last.space || text_[last.begin] == ideographicSpace;
    };
    while (made.lineEnd > 0 && hangs(made_->clusters_[made.lineEnd - 1]))
        --made.lineEnd;
    if (kind == Opportunity::Kind::Plain || kind == Opportunity::Kind::SoftHyphen) correct(made);
    if (kind == Opportunity::Kind::Plain && !profile_.reshapesAtBreaks()) keepLigature(made);
    if (kind == Opportunity::Kind::Space && made.lineEnd > 0 && cluster < made_->clusters_.size() &&
        showsEndOf(made_->clusters_[made.lineEnd - 1]) &&
        made_->isInOneInline(made_->clusters_[made.lineEnd - 1], made_->clusters_[cluster]))
        made.endCorrection = static_cast<float>(correctionsAt(made.lineEnd, false).before);
    // An engine that reshapes lines looks for the end of a line in the unbroken text first, so that text that
    // only reshaping makes narrow enough does not fit. Measured in Chromium 156: `half` in Vollkorn, whose
    // `f` is further from a space than from the end of a line.
    const bool dividesLigature = cluster < ligatureStart_.size() && ligatureStart_[cluster] != cluster;
    if (kind != Opportunity::Kind::SoftHyphen && made.endCorrection < 0 && !dividesLigature) {
        made.fitCorrection = -made.endCorrection;
        made.affected = made.lineEnd - 1;
    }
    if (kind == Opportunity::Kind::SoftHyphen) {
        if (profile_.reshapesAtBreaks()) {
            made.affected = affectedBy(cluster);
            made.reshapes = isUnsafe(cluster);
        }
        made.endCorrection += made_->hyphenAdvanceBefore(cluster);
        made.endLetterUnits = profile_.spacesHyphen() ? 1 : 0;
    }
    return made;
}

// Chromium 156 reshapes a line without the spaces at its end where the place of its end is visible, and not
// at an end of an inline box: the `r` of `after` in Lato, kerned with the space, then has its full width.
// It looks at the box that the text is in by itself: emphasis in a box with a border is no such text. Links
// are underlined.
bool ParagraphBuilder::showsEndOf(const Cluster& last) const {
    const project::Run::Kind kind = made_->runs_[last.run].kind;
    return style_.alignsEnds || kind == project::Run::Kind::Link ||
           (kind == project::Run::Kind::Plain && style_.decorated);
}

ParagraphBuilder::Corrections ParagraphBuilder::correctionsAt(std::uint32_t at, bool both) const {
    const auto count = static_cast<std::uint32_t>(made_->clusters_.size());
    if (!profile_.reshapesAtBreaks() || at == 0 || at >= count) return {};
    if (!isUnsafe(at) || itemOf_[at] != itemOf_[at - 1]) return {};
    std::uint32_t first = at - 1;
    while (first > 0 && isUnsafe(first) && itemOf_[first - 1] == itemOf_[at])
        --first;
    std::uint32_t last = at + 1;
    while (last < count && isUnsafe(last) && itemOf_[last] == itemOf_[at])
        ++last;
    const Item& item = items_[itemOf_[at]];
    const std::uint32_t begin = made_->clusters_[first].begin;
    const std::uint32_t middle = made_->clusters_[at].begin;
    const std::uint32_t end =
        last < count && itemOf_[last] == itemOf_[at] ? made_->clusters_[last].begin : item.end;
    const auto change = [&](std::uint32_t from, std::uint32_t to, std::uint32_t cluster, std::uint32_t past) {
        return made_->shaper_.advance(text_, item, from, to) - made_->ems(cluster, past);
    };
    return {change(begin, middle, first, at), both ? change(middle, end, at, last) : 0};
}

void ParagraphBuilder::correct(Opportunity& made) const {
    const Corrections corrections = correctionsAt(made.cluster, true);
    made.endCorrection = static_cast<float>(corrections.before);
    made.startCorrection = static_cast<float>(corrections.after);
}

void ParagraphBuilder::addOpportunities() {
    const std::vector<Cluster>& clusters = made_->clusters_;
    if (clusters.empty()) return;
    const BreakMap breaks = profile_.breaks(text_, style_.language);
    for (std::uint32_t i = 1; i < clusters.size(); ++i) {
        const std::uint32_t unit = clusters[i].begin;
        const char16_t before = text_[unit - 1];
        if (before == lineFeed)
            made_->opportunities_.push_back(opportunity(i, Opportunity::Kind::Forced));
        else if (text_[unit] == lineFeed || !breaks[unit])
            continue;
        else if (before == u' ')
            made_->opportunities_.push_back(opportunity(i, Opportunity::Kind::Space));
        else if (before != softHyphen) {
            Opportunity plain = opportunity(i, Opportunity::Kind::Plain);
            plain.needsTwoBefore = profile_.needsTwoBefore(text_, unit);
            made_->opportunities_.push_back(plain);
        } else if (style_.softHyphens)
            made_->opportunities_.push_back(opportunity(i, Opportunity::Kind::SoftHyphen));
    }
    made_->opportunities_.push_back(
        opportunity(static_cast<std::uint32_t>(clusters.size()), Opportunity::Kind::Forced));
    addOverflowOpportunities();
}

void ParagraphBuilder::correctOverflowOpportunities(Paragraph& paragraph) const {
    for (Opportunity& cut : paragraph.overflowOpportunities_) {
        if (profile_.reshapesAtBreaks()) {
            cut.affected = affectedBy(cut.cluster);
            cut.reshapes = isUnsafe(cut.cluster);
            cut.insideLigature = insideLigature(cut.cluster);
            cut.endCorrection = 0;
            correct(cut);
            if (cut.kind == Opportunity::Kind::SoftHyphen)
                cut.endCorrection += made_->hyphenAdvanceBefore(cut.cluster);
        } else {
            keepLigature(cut);
        }
    }
}

// Chromium 156 takes every place inside a ligature for its left edge, which in text from right to left is
// where it ends.
float ParagraphBuilder::insideLigature(std::uint32_t cluster) const {
    const std::uint32_t first = ligatureStart_[cluster];
    if (first == cluster) return 0;
    if (made_->clusters_[cluster].level % 2 == 0) return static_cast<float>(made_->ems(first, cluster));
    std::uint32_t end = cluster;
    while (end < ligatureStart_.size() && ligatureStart_[end] == first)
        ++end;
    return -static_cast<float>(made_->ems(cluster, end));
}

std::uint32_t ParagraphBuilder::affectedBy(std::uint32_t cluster) const {
    std::uint32_t first = cluster - 1;
    while (first > 0 && isUnsafe(first) && itemOf_[first - 1] == itemOf_[cluster - 1])
        --first;
    return first;
}

// An engine that does not reshape lines (Firefox 153) counts a whole ligature for a line that ends inside it,
// but draws only a share of it. `->` is one glyph of Manrope: `left->right` breaks after the hyphen only if
// the arrow fits. `ti` is one glyph of Lato: in 17.3 px, `kişiliktir` at 15.3 px is cut
// after `ik`, although a share of `t` would fit.
void ParagraphBuilder::keepLigature(Opportunity& cut) const {
    const std::vector<std::uint32_t>& starts = ligatureStart_;
    if (starts[cut.cluster] == cut.cluster) return;
    std::uint32_t end = cut.cluster;
    while (end < starts.size() && starts[end] == starts[cut.cluster])
        ++end;
    cut.affected = starts[cut.cluster];
    cut.fitCorrection = static_cast<float>(made_->ems(cut.cluster, end));
}

// Opportunities inside words that are wider than the line. CSS Text 3 § 5.5: between grapheme clusters.
void ParagraphBuilder::addOverflowOpportunities() {
    const std::vector<Cluster>& clusters = made_->clusters_;
    std::uint32_t begin = 0;
    for (const Opportunity& word : made_->opportunities_) {
        for (std::uint32_t i = begin + 1; i < word.lineEnd; ++i) {
            if (!graphemes_[clusters[i].begin]) continue;
            // A letter is parted from its soft hyphen only in Chromium. Chromium draws a hyphen where a word
            // is cut after a soft hyphen, even with `hyphens: none` (measured in Chromium 156).
            if (text_[clusters[i].begin] == softHyphen && !profile_.reservesHyphen()) continue;
            const bool hyphen = text_[clusters[i].begin - 1] == softHyphen && profile_.reservesHyphen();
            const bool always = profile_.breaksOverflowingWordBefore(text_, clusters[i].begin);
            const Opportunity::Kind kind =
                always ? Opportunity::Kind::OverflowingWord : Opportunity::Kind::OverflowWrap;
            Opportunity cut = opportunity(i, hyphen ? Opportunity::Kind::SoftHyphen : kind);
            cut.lineEnd = i;
            cut.breaksAtLineStart = profile_.breaksAtLineStart(text_, clusters[i].begin);
            made_->overflowOpportunities_.push_back(cut);
        }
        begin = word.cluster;
    }
}

}  // namespace tenter::text
