/** The page served on this machine only. */
@NullMarked
package org.brakewright.app.web;

import org.jspecify.annotations.NullMarked;
