/** Lists of things under titles, of which one is chosen by a part of its name. */
package org.amberyard.workbench.lists;
