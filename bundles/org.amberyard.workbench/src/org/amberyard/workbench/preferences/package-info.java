/** The user's own settings, beside those of studies. */
package org.amberyard.workbench.preferences;
