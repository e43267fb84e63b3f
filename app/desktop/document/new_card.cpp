#include "document/new_card.h"

#include <QObject>

#include "document/wording.h"

namespace tenter::desktop {

project::TextPart newTextPart(const std::string& role) {
    const QString text =
        role == "body" ? QObject::tr("New paragraph", "text of a new part")
                       : QObject::tr("New %1", "text of a new part; its role").arg(roleInSentence(role));
    project::TextPart part;
    part.role = role;
    part.copy = {{project::Run::Kind::Plain, text.toStdString(), {}}};
    if (role == "button") part.link = "#";
    return part;
}

project::Card newCard() {
    project::Card card;
    for (const char* role : {"heading", "body", "button"})
        card.parts.emplace_back(newTextPart(role));
    return card;
}

}  // namespace tenter::desktop
