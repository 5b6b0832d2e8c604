/** The dialog of the user's own settings. */
package org.amberyard.workbench.settings;
