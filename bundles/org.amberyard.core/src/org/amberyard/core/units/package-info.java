/** Units of figures and their conversion at the edge. */
package org.amberyard.core.units;
