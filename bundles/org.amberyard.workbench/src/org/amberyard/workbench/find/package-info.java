/** Finds things by a part of their names: fields, elements, views, tables. */
package org.amberyard.workbench.find;
