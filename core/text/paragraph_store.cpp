#include "text/paragraph_store.h"

#include <algorithm>
#include <functional>
#include <iterator>
#include <string_view>

namespace tenter::text {

namespace {

std::size_t memoryOf(const project::Copy& copy) {
    std::size_t bytes = copy.capacity() * sizeof(project::Run);
    for (const project::Run& run : copy)
        bytes += run.text.size() + run.to.size();
    return bytes;
}

}  // namespace

std::size_t ParagraphStore::Hash::operator()(const Key& key) const {
    std::size_t hash = std::hash<const void*>()(key.profile);
    const auto add = [&hash](std::size_t more) {
        hash ^= more + 0x9e3779b97f4a7c15U + (hash << 6U) + (hash >> 2U);
    };
    const auto addText = [&add](std::string_view text) { add(std::hash<std::string_view>()(text)); };
    const ShapingStyle& style = *key.style;
    for (const std::string& family : style.family)
        addText(family);
    add(std::hash<double>()(style.weight));
    add((style.italic ? 1U : 0U) | (style.ligatures ? 2U : 0U) | (style.softHyphens ? 4U : 0U) |
        (style.rightToLeft ? 8U : 0U) | static_cast<unsigned>(style.letterCase) << 4U);
    addText(style.language);
    for (const project::Run& run : *key.copy) {
        add(static_cast<std::size_t>(run.kind));
        addText(run.text);
        addText(run.to);
    }
    return hash;
}

ParagraphPtr ParagraphStore::get(const project::Copy& copy, const ShapingStyle& style,
                                 const BreakProfile& profile) {
    if (const auto found = byKey_.find({&copy, &style, &profile}); found != byKey_.end()) {
        entries_.splice(entries_.begin(), entries_, found->second);
        return found->second->paragraph;
    }
    ParagraphPtr paragraph = Paragraph::prepare(copy, style, fonts_, profile);
    entries_.push_front({copy, style, &profile, paragraph, 0});
    Entry& entry = entries_.front();
    entry.memory = sizeof(Entry) + memoryOf(entry.copy) + paragraph->memory();
    memory_ += entry.memory;
    byKey_.emplace(keyOf(entry), entries_.begin());
    if (memory_ > evictAt_) evict();
    return paragraph;
}

void ParagraphStore::evict() {
    for (auto entry = entries_.end(); memory_ > capacity_ && entry != entries_.begin();) {
        --entry;
        if (entry->paragraph.use_count() > 1) continue;
        memory_ -= entry->memory;
        byKey_.erase(keyOf(*entry));
        entry = entries_.erase(entry);
    }
    // Where all are in use, not every new one looks through them again.
    evictAt_ = std::max(capacity_, memory_ + memory_ / 4);
}

void ParagraphStore::clear() {
    byKey_.clear();
    entries_.clear();
    memory_ = 0;
    evictAt_ = capacity_;
}

}  // namespace tenter::text
