/** How a figure comes about: its rule in words and its parts, down to inputs. */
package org.amberyard.core.why;
