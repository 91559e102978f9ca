/** What is not as it should be: reported, and disposed of. */
package wainbook.matter.nonconformity;
