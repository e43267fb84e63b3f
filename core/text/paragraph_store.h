// Paragraphs that were prepared before, so that an edit shapes only the text it changed.
#pragma once

#include <cstddef>
#include <list>
#include <unordered_map>

#include "text/paragraph.h"

namespace tenter::text {

/// A bounded cache of paragraphs by text, shaping style and break profile. Whoever lays out passes it in. Not
/// safe to use from two threads at once.
class ParagraphStore {
public:
    /// Bytes of paragraphs that are kept although nothing else uses them. Three variants of a long row under
    /// two profiles take about 2 MB.
    static constexpr std::size_t defaultCapacity = std::size_t{32} << 20;

    /// `capacity` in bytes.
    explicit ParagraphStore(Fonts& fonts, std::size_t capacity = defaultCapacity)
        : fonts_(fonts), capacity_(capacity), evictAt_(capacity) {}
    ParagraphStore(const ParagraphStore&) = delete;
    ParagraphStore& operator=(const ParagraphStore&) = delete;

    /// The paragraph of `copy`, prepared if it is not kept. Beyond the capacity, the paragraphs that were
    /// used least recently go first; those that something else still holds stay.
    ParagraphPtr get(const project::Copy& copy, const ShapingStyle& style, const BreakProfile& profile);
    /// Drops every paragraph: after the fonts changed.
    void clear();
    [[nodiscard]] Fonts& fonts() { return fonts_; }
    [[nodiscard]] std::size_t size() const { return entries_.size(); }
    /// Bytes of all kept paragraphs and their keys: an estimate.
    [[nodiscard]] std::size_t memory() const { return memory_; }

private:
    struct Entry {
        project::Copy copy;
        ShapingStyle style;
        const BreakProfile* profile;
        ParagraphPtr paragraph;
        std::size_t memory;
    };
    /// Points into an entry, or to what is looked up.
    struct Key {
        const project::Copy* copy;
        const ShapingStyle* style;
        const BreakProfile* profile;
        friend bool operator==(const Key& a, const Key& b) {
            return a.profile == b.profile && *a.style == *b.style && *a.copy == *b.copy;
        }
    };
    struct Hash {
        std::size_t operator()(const Key& key) const;
    };
    static Key keyOf(const Entry& entry) { return {&entry.copy, &entry.style, entry.profile}; }
    void evict();

    Fonts& fonts_;
    std::size_t capacity_, evictAt_;
    std::size_t memory_ = 0;
    std::list<Entry> entries_;  // most recently used first
    std::unordered_map<Key, std::list<Entry>::iterator, Hash> byKey_;
};

}  // namespace tenter::text
