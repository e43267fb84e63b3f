// Gives the controls that Qt does not know their interfaces for screen readers.
#pragma once

namespace tenter::desktop::accessible {

/// Makes Qt use the interfaces of this folder. Further calls change nothing.
void install();

}  // namespace tenter::desktop::accessible
