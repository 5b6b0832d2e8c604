/** Open studies: their edits, their results, their files. Everything here lives on the event thread unless it says not. */
package org.amberyard.workbench.session;
