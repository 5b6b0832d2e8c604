/** The language of the window: which it is, and what the layers below, which speak English, say in it. */
package org.amberyard.workbench.language;
