#include "emit/wraps.h"

#include "checks/phrases.h"
#include "emit/escape.h"
#include "emit/table.h"
#include "layout/prepared.h"
#include "units/quantities.h"

namespace tenter::emit {

namespace {

const std::string& kindOf(const layout::PreparedRow& row, const sweep::WrapPoint& wrap) {
    return row.roles()[row.band(0).part(wrap.place).role];
}

}  // namespace

std::string wrapsJson(const layout::PreparedRow& row, const std::vector<sweep::WrapPoint>& wraps) {
    std::string out = "[";
    for (const sweep::WrapPoint& wrap : wraps) {
        out += out.size() == 1 ? "\n {\"width\": " : ",\n {\"width\": ";
        out += jsonNumber(wrap.width) + ", \"card\": " + std::to_string(wrap.place.card) +
               ", \"part\": " + std::to_string(wrap.place.part) +
               ", \"kind\": " + jsonString(kindOf(row, wrap)) + ", \"below\": " + std::to_string(wrap.below) +
               ", \"above\": " + std::to_string(wrap.above) + "}";
    }
    return out + "]\n";
}

std::string wrapsTable(const project::Project& project, const layout::PreparedRow& row,
                       const std::vector<sweep::WrapPoint>& wraps) {
    std::vector<Cells> lines{{"viewport", "lines", "card", "role", "text"}};
    for (const sweep::WrapPoint& wrap : wraps) {
        const auto& text = std::get<project::TextPart>(project.part(wrap.place));
        lines.push_back({units::px(wrap.width),
                         std::to_string(wrap.below) + " → " + std::to_string(wrap.above),
                         std::to_string(wrap.place.card + 1), oneLine(kindOf(row, wrap)),
                         oneLine(checks::inQuotation(project::plainText(text.copy)))});
    }
    return table(lines);
}

}  // namespace tenter::emit
