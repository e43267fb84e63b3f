// Connections to objects that report every change by one signal, `changed(flags)`.
#pragma once

#include <QObject>
#include <functional>
#include <type_traits>

namespace tenter::desktop {

/// Calls `slot`, a function or a member function of `receiver`, when `source` reports one of `changes`.
template <class Source, class Receiver, class Slot>
QMetaObject::Connection onChange(const Source& source, typename Source::Changes changes, Receiver* receiver,
                                 Slot slot) {
    return QObject::connect(&source, &Source::changed, receiver,
                            [receiver, changes, slot](typename Source::Changes reported) {
                                if (!(reported & changes)) return;
                                if constexpr (std::is_invocable_v<const Slot&>)
                                    slot();
                                else
                                    std::invoke(slot, receiver);
                            });
}

}  // namespace tenter::desktop
