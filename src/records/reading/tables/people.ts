/**
 * Words that make somebody else the doer: "my sister planted".
 * And given names, so that "Dave" is no variety; those that are also plants stand apart, for only the rest of a line tells
 * which is meant.
 */
import { keyOf } from "./rows.ts";

const lists = new Map<string, ReadonlySet<string>>();

/** People by what they are to one: "my neighbour", "the lad". */
export function personWords(): ReadonlySet<string> {
  return setOf(personRows);
}

/** Given names that are no plants. */
export function givenNames(): ReadonlySet<string> {
  return setOf(givenNameRows);
}

/** Given names that are plants too. */
export function plantGivenNames(): ReadonlySet<string> {
  return setOf(plantNameRows);
}

function setOf(rows: string): ReadonlySet<string> {
  let set = lists.get(rows);
  if (set === undefined) {
    set = new Set(rows.trim().split(/, |\n/).map(keyOf));
    lists.set(rows, set);
  }
  return set;
}

export const personRows = `
neighbour, neighbor, next door neighbour, mum, mom, mam, mummy, mommy, mother, ma, dad, daddy, father, da, pa, papa, pop, nan, nana, nanna, nanny, gran, granny, grandma, grandmother, grandad, granddad, grandpa, grandfather, gramps, grampy, oma, opa, bibi, babu, amma, appa, auntie, aunt, uncle, sister, sis, brother, bro, sibling, cousin, niece, nephew, son, daughter, kid, child, children, toddler, baby, grandson, granddaughter, grandchild, grandchildren, grandkid, husband, hubby, wife, wifey, missus, her indoors, himself, herself, other half, DH, partner, girlfriend, boyfriend, fiancé, fiancée, in-law, mother-in-law, father-in-law, sister-in-law, brother-in-law, mum-in-law, MIL, godmother, stepson, stepdaughter, twins, family, the family, the lad, lad, the boys, boy, girl, the girl, young lady, the old boy, old boy, old fella, old chap, old man, old lady, bloke, guy, chap, fella, mate, friend, pal, buddy, colleague, boss, workmate, work colleague, flatmate, housemate, roommate, lodger, tenant, landlord, landlady, visitor, guest, helper, volunteer helper, gardener, head gardener, garden boy, garden girl, shamba boy, mali, apprentice, trainee, intern, student, pupil, teacher, farmer, farmhand, farm worker, labourer, worker, contractor, builder, tree surgeon, postman, window cleaner, vicar, shopkeeper, stallholder, man next door, woman next door, people next door, lady next door, chap next door, lady down the road, man down the road, somebody, someone, everybody, everyone, anyone, nobody, vet, carer, babysitter, viewer, subscriber, follower, reader, our lot, the gang, folks, parents, grandparents`;

export const givenNameRows = `
Aaron, Abdul, Abigail, Adam, Aditya, Adrian, Aisha, Aidan, Ajay, Akinyi, Alan, Alasdair, Albert, Alec, Alex, Alexander, Alexandra, Alf, Alfie, Alice, Alison, Amanda, Amina, Amit, Amy, Andrea, Andrew, Andy, Angela, Angus, Anil, Anita, Anjali, Ann, Anna, Anne, Annie, Anthony, Antonio, Archie, Arjun, Arthur, Asha, Barbara, Barney, Barry, Becca, Becky, Ben, Bernard, Bernie, Bert, Beth, Betty, Bev, Bill, Billy, Bob, Bobby, Brenda, Brendan, Brian, Bridget, Bronwyn, Bruce, Caitlin, Callum, Carl, Carla, Carlos, Carol, Caroline, Catherine, Cath, Cathy, Charlie, Charles, Charlotte, Cheryl, Chidi, Chloe, Chris, Christina, Christine, Christopher, Claire, Clare, Clive, Colin, Colm, Connor, Craig, Cynthia, Dan, Daniel, Danny, Darren, Dave, David, Dawn, Dean, Deb, Debbie, Deborah, Declan, Deepa, Deirdre, Denise, Dennis, Derek, Devi, Diane, Dick, Don, Donald, Donna, Doreen, Doris, Dorothy, Doug, Duncan, Dylan, Eddie, Edith, Edna, Edward, Eileen, Elaine, Eleanor, Elizabeth, Ella, Ellen, Ellie, Elsie, Emily, Emma, Eric, Ernie, Ethel, Ethan, Eunice, Eva, Evan, Eve, Evelyn, Fatima, Fergus, Fiona, Florence, Fran, Frances, Francis, Frank, Fred, Freddie, Gail, Gareth, Garry, Gary, Gavin, Gemma, Geoff, Geoffrey, George, Georgia, Gerald, Geraldine, Gerry, Giles, Gill, Gina, Gladys, Glenda, Glenn, Glyn, Gordon, Grace, Graeme, Graham, Grant, Greg, Gupta, Gwen, Hamish, Hannah, Harold, Harriet, Harry, Hassan, Helen, Henry, Hilary, Howard, Hugh, Ian, Imogen, Ingrid, Irene, Isaac, Isabel, Isla, Isobel, Jack, Jackie, Jacob, Jake, Jamal, James, Jamie, Jan, Jane, Janet, Janice, Jason, Jay, Jean, Jeff, Jen, Jenny, Jennifer, Jeremy, Jess, Jessica, Jill, Jim, Jimmy, Jo, Joan, Joanna, Joanne, Joe, Joel, John, Johnny, Jon, Jonathan, Jordan, Joseph, Josh, Joshua, Joy, Joyce, Juan, Judith, Judy, Julia, Julian, Julie, June, Kamau, Karen, Kareem, Kate, Kath, Kathleen, Kathy, Katie, Kay, Keith, Kelly, Ken, Kenneth, Kev, Kevin, Kieran, Kim, Kiran, Kirsty, Kofi, Kumar, Kwame, Kyle, Lakshmi, Larry, Laura, Lauren, Lawrence, Leah, Lee, Len, Leo, Leon, Leonard, Lesley, Leslie, Lewis, Liam, Linda, Lindiwe, Lisa, Liz, Lizzie, Lorna, Lorraine, Louis, Lucy, Luke, Lynn, Lynne, Mabel, Maggie, Malcolm, Mandy, Marcus, Margaret, Maria, Marian, Marie, Marion, Mark, Martha, Martin, Marvin, Matt, Matthew, Maureen, Mavis, Max, Meera, Meg, Megan, Mercy, Mhairi, Michael, Michelle, Mick, Mike, Millie, Miriam, Moira, Molly, Monica, Morag, Muhammad, Muriel, Mwangi, Nadia, Nancy, Naomi, Natalie, Nathan, Neil, Neville, Niall, Nick, Nicola, Nigel, Njeri, Nomsa, Nora, Norma, Norman, Oliver, Omar, Oscar, Otieno, Owen, Paddy, Pam, Pamela, Pat, Patricia, Patrick, Paul, Paula, Pauline, Pedro, Pete, Peter, Phil, Philip, Phyllis, Piet, Polly, Precious, Priya, Rachel, Raj, Rajesh, Ralph, Ravi, Ray, Raymond, Rebecca, Reg, Rhys, Rich, Richard, Rick, Rita, Rob, Robbie, Robert, Robin, Roger, Ron, Ronald, Rory, Rosie, Ross, Roy, Ruth, Ryan, Sally, Sam, Samantha, Samuel, Sandra, Sanjay, Sara, Sarah, Scott, Sean, Seamus, Sharon, Shaun, Sheila, Shirley, Sibusiso, Sid, Sian, Simon, Sinead, Siobhan, Sipho, Sonia, Sophie, Stan, Stella, Steph, Stephanie, Stephen, Steve, Steven, Stewart, Stuart, Sue, Sunil, Sunita, Susan, Susie, Suzanne, Sylvia, Ted, Teresa, Terry, Thabo, Theo, Theresa, Thomas, Tim, Tina, Toby, Tom, Tommy, Tony, Tracey, Tracy, Trevor, Trish, Usha, Val, Valerie, Vanessa, Vera, Vic, Victor, Vijay, Vikram, Vince, Vincent, Wanjiku, Walter, Wayne, Wendy, Wilf, Will, William, Winston, Yusuf, Yvonne, Zac, Zanele, Zoe`;

export const plantNameRows = `
Rose, Lily, Lilly, Daisy, Basil, Sage, Ivy, Iris, Violet, Viola, Heather, Holly, Hazel, Olive, Poppy, Jasmine, Rosemary, Fern, Willow, Clementine, Pepper, Ginger, Saffron, Bryony, Erica, Veronica, Marigold, Primrose, Petunia, Camellia, Dahlia, Magnolia, Myrtle, Laurel, Rowan, Ash, Aspen, Juniper, Clover, Cherry, Plum, Berry, Amaryllis, Angelica, Zinnia, Lavender, Lilac, Hyacinth, Daphne, Tansy, Rue, Sorrel, Clary, Melissa, Nigella, Cicely, Celandine, Blossom, Bluebell, Betony, Acacia, Mimosa, Anemone, Azalea, Calla, Freesia, Gardenia, Lotus, Pansy, Peony, Posy, Quince, Reed, Rosa, Tulsi, Valerian, Verbena, Yarrow, Herb, Bay, Tulip, Begonia, Bramble, Briar, Elder, Maple, Teasel`;
