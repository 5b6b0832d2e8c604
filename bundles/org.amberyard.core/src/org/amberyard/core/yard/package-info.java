/** The yard month by month: what the buses need from the ports, how they are charged, and the bill that follows. */
package org.amberyard.core.yard;
