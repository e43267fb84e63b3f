#include "emit/room_for_copy.h"

#include "checks/phrases.h"
#include "emit/escape.h"
#include "emit/table.h"
#include "units/quantities.h"

namespace tenter::emit {

namespace {

const project::TextPart& textOf(const project::Project& project, const checks::RoomForCopy& room) {
    return std::get<project::TextPart>(project.part(room.place));
}

}  // namespace

std::string roomJson(const project::Project& project, const std::vector<checks::RoomForCopy>& rooms) {
    std::string out = "[";
    for (const checks::RoomForCopy& room : rooms)
        out += (out.size() == 1 ? "\n {\"card\": " : ",\n {\"card\": ") + std::to_string(room.place.card) +
               ", \"part\": " + std::to_string(room.place.part) +
               ", \"kind\": " + jsonString(textOf(project, room).role) +
               ", \"lines\": " + std::to_string(room.lines) +
               ", \"characters\": " + std::to_string(room.characters) +
               ", \"spare\": " + std::to_string(room.spare) + ", \"width\": " + jsonNumber(room.width) + "}";
    return out + "]\n";
}

std::string roomSentence() {
    return "Room for text: the number of characters that you can add to each text before it needs more "
           "lines than its wish allows,\nat the viewport width with the least room. A negative number: the "
           "text is "
           "too long by that many characters.";
}

std::string roomTable(const project::Project& project, const std::vector<checks::RoomForCopy>& rooms) {
    std::vector<Cells> lines{{"lines allowed", "characters", "room", "viewport", "role", "text"}};
    for (const checks::RoomForCopy& room : rooms) {
        const project::TextPart& text = textOf(project, room);
        lines.push_back({std::to_string(room.lines), std::to_string(room.characters),
                         units::figure(room.spare, 0), units::px(room.width, 1), oneLine(text.role),
                         oneLine(checks::inQuotation(project::plainText(text.copy)))});
    }
    return table(lines);
}

}  // namespace tenter::emit
