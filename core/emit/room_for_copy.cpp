#include "emit/room_for_copy.h"

#include "checks/phrases.h"
#include "emit/escape.h"
#include "emit/table.h"
#include "units/number.h"

namespace tenter::emit {

namespace {

const project::TextPart& textOf(const project::Project& project, const checks::RoomForCopy& room) {
    return std::get<project::TextPart>(project.cards[room.card].parts[room.part]);
}

}  // namespace

std::string roomJson(const project::Project& project, const std::vector<checks::RoomForCopy>& rooms) {
    std::string out = "[";
    for (const checks::RoomForCopy& room : rooms)
        out += (out.size() == 1 ? "\n {\"card\": " : ",\n {\"card\": ") + std::to_string(room.card) +
               ", \"part\": " + std::to_string(room.part) +
               ", \"kind\": " + jsonString(textOf(project, room).role) +
               ", \"lines\": " + std::to_string(room.lines) +
               ", \"characters\": " + std::to_string(room.characters) +
               ", \"spare\": " + std::to_string(room.spare) + ", \"width\": " + jsonNumber(room.width) + "}";
    return out + "]\n";
}

std::string roomSentence() {
    return "Room for copy: how many more characters like its own each text surely has before it takes more "
           "lines than are wished, and the width of the page where that is least.";
}

std::string roomTable(const project::Project& project, const std::vector<checks::RoomForCopy>& rooms) {
    std::vector<Cells> lines{{"lines", "characters", "to spare", "page", "kind", "copy"}};
    for (const checks::RoomForCopy& room : rooms) {
        const project::TextPart& text = textOf(project, room);
        lines.push_back({std::to_string(room.lines), std::to_string(room.characters),
                         std::to_string(room.spare), units::number(room.width, 1), oneLine(text.role),
                         oneLine(checks::inQuotation(project::plainText(text.copy)))});
    }
    return table(lines);
}

}  // namespace tenter::emit
