#include "controls/editor.h"

namespace tenter::desktop::controls {

namespace {

bool isRampPoint(const Json& value) {
    return value.is_array() && value.size() == 2 && value[0].is_number() && value[1].is_number();
}

QString plain(const Json& value) {
    return QString::fromStdString(value.dump());
}

}  // namespace

QString Editor::textOf(const Json& value) const {
    if (value.is_string()) return QString::fromStdString(value.get<std::string>());
    if (value.is_boolean()) return value.get<bool>() ? QObject::tr("on") : QObject::tr("off");
    if (!value.is_array()) return plain(value);
    // A ramp is two points of width and size.
    if (value.size() == 2 && isRampPoint(value[0]) && isRampPoint(value[1]))
        return QObject::tr("%1\u00A0px at a width of %2\u00A0px, %3\u00A0px at a width of %4\u00A0px")
            .arg(plain(value[0][1]), plain(value[0][0]), plain(value[1][1]), plain(value[1][0]));
    QStringList words;
    for (const Json& one : value)
        words << textOf(one);
    return words.join(", ");
}

}  // namespace tenter::desktop::controls
