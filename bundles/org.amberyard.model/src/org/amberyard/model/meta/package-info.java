/** Labels, units and documentation of every field of a study, read from the model itself. */
package org.amberyard.model.meta;
