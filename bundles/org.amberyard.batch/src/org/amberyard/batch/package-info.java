/** The application without a window, for scripts and servers. */
package org.amberyard.batch;
