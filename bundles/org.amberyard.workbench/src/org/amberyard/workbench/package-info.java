/** The desktop application: its life cycle, windows and perspectives. */
package org.amberyard.workbench;
