/** Numerics that every stage of the method shares. */
package org.amberyard.core.math;
