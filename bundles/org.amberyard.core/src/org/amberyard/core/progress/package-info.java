/** Long computations that tell how far they are and can be stopped. */
package org.amberyard.core.progress;
