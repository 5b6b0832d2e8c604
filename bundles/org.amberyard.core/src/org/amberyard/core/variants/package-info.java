/** Plans in variants of a study: one input at a time, two and all together, scenarios, and what explains the differences. */
package org.amberyard.core.variants;
