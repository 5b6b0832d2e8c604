/** Rules that a study must keep, and the findings where it does not. */
package org.amberyard.model.validation;
