#include "emit/wraps.h"

#include "emit/escape.h"
#include "emit/table.h"
#include "layout/prepared.h"
#include "units/number.h"

namespace tenter::emit {

namespace {

const std::string& kindOf(const layout::PreparedRow& row, const sweep::WrapPoint& wrap) {
    return row.roles()[row.band(0).cards[wrap.card].parts[wrap.part].role];
}

}  // namespace

std::string wrapsJson(const layout::PreparedRow& row, const std::vector<sweep::WrapPoint>& wraps) {
    std::string out = "[";
    for (const sweep::WrapPoint& wrap : wraps) {
        out += out.size() == 1 ? "\n {\"width\": " : ",\n {\"width\": ";
        out += jsonNumber(wrap.width) + ", \"card\": " + std::to_string(wrap.card) +
               ", \"part\": " + std::to_string(wrap.part) + ", \"kind\": " + jsonString(kindOf(row, wrap)) +
               ", \"below\": " + std::to_string(wrap.below) + ", \"above\": " + std::to_string(wrap.above) +
               "}";
    }
    return out + "]\n";
}

std::string wrapsTable(const layout::PreparedRow& row, const std::vector<sweep::WrapPoint>& wraps) {
    std::vector<Cells> lines{{"width", "card", "part", "kind", "lines"}};
    for (const sweep::WrapPoint& wrap : wraps)
        lines.push_back({units::number(wrap.width, 3), std::to_string(wrap.card), std::to_string(wrap.part),
                         oneLine(kindOf(row, wrap)),
                         std::to_string(wrap.below) + " → " + std::to_string(wrap.above)});
    return table(lines);
}

}  // namespace tenter::emit
