/**
 * Safe isolation: what was opened, locked and proved dead, who may work, and how the vehicle is made live again. It records
 * and checks; it cannot see the vehicle and makes nothing safe.
 */
package wainbook.isolation;
