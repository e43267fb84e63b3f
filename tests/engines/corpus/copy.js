// Texts for the corpus, written for it: a field station on a coast says the same few things in many scripts. Invisible
// characters are written as escapes.

/** Headings, paragraphs and button labels by language, three of each. */
export const copy = {
  cs: {
    headings: ['Žluťoučký úsvit nad slaniskem', 'Příliv, odliv a čtvero ročních období', 'Ďasík mořský na dně tůně'],
    paragraphs: [
      'Vyjdeme ještě za tmy, abychom stihli první kulíky; kdo přijde později, uvidí už jen jejich stopy v bahně.',
      'Přístřešek měří 12,5 m na délku a ob\u00ADser\u00ADva\u00ADtoř má otevřeno v pá\u00A020–22\u00A0h, pokud to vítr dovolí.',
      'Šířka průlivu? Tři sta metrů – někdy víc, někdy míň. Loďka uveze nejvýš šest lidí a jednoho psa.',
    ],
    buttons: ['Přihlásit se', 'Časy přílivu', 'Mapa stezek'],
  },
  de: {
    headings: ['Küstenschutzfreiwilligenausbildung', 'Watt\u00ADwan\u00ADder\u00ADungs\u00ADver\u00ADzeich\u00ADnis der Nordbucht', 'Seegraswiesenkartierung'],
    paragraphs: [
      'Die Gezeitentabellenaushänge am Bootshaus gelten auch für die Niedrigwasserwanderungen, die wir bei Sturmflutwarnung absagen.',
      'Bringen Sie Gum\u00ADmi\u00ADstie\u00ADfel, Wind\u00ADjacken und – falls vor\u00ADhan\u00ADden – Fern\u00ADglä\u00ADser mit; Schutz\u00ADbril\u00ADlen stel\u00ADlen wir.',
      'Treffpunkt: Leuchtturmwärterhäuschen, 6:45 Uhr. Rückkehr gegen 11:30 Uhr, je nach Wasserstand auch früher oder später.',
    ],
    buttons: ['Jetzt anmelden', 'Wasserstandsvorhersage', 'Mit\u00ADglie\u00ADder\u00ADbe\u00ADreich'],
  },
  vi: {
    headings: ['Buổi sáng trên đầm lầy nước mặn', 'Thủy triều rút để lại những gì', 'Đếm chim ở mũi phía bắc'],
    paragraphs: [
      'Chúng tôi đi bộ hai tiếng trên lối ván gỗ trước khi nước lên, và lắng nghe đàn chim thức dậy từng con một.',
      'Cua, sò, sao biển nhỏ và rất nhiều câu hỏi của trẻ em. Xin mang ủng cao, nước uống và một chiếc áo khoác gió.',
      'Mỗi nhóm tối đa mười hai người; trẻ em dưới tám tuổi phải đi cùng người lớn trong suốt buổi.',
    ],
    buttons: ['Đặt chỗ', 'Giờ thủy triều', 'Đường đến trạm'],
  },
  el: {
    headings: ['Ο ήλιος ανατέλλει πάνω από τους υγρότοπους', 'Άμπωτη και πλημμυρίδα', 'Τα ίχνη των γλάρων στην άμμο'],
    paragraphs: [
      'Περπατάμε δύο ώρες στον ξύλινο διάδρομο, πριν ανέβει η παλίρροια, και ακούμε τα πουλιά να ξυπνούν ένα ένα.',
      'Φέρτε ψηλές μπότες· το έδαφος είναι μαλακό μετά τη βροχή. Ο μικρός φάρος ανοίγει στις οκτώ ακριβώς.',
      'Καβούρια, όστρακα, αστερίες και πολλές ερωτήσεις από παιδιά. Η διαδρομή τελειώνει στο παλιό λιμανάκι.',
    ],
    buttons: ['Κρατήστε θέση', 'Ώρες παλίρροιας', 'Χάρτης'],
  },
  ru: {
    headings: ['Рассвет над солёными лугами', 'Что оставляет море, когда уходит', 'Считаем куликов на северной косе'],
    paragraphs: [
      'Мы идём два часа по деревянному настилу, пока не поднялась вода, и слушаем, как птицы просыпаются одна за другой.',
      'Возьмите сапоги и ветровку: после дождя почва мягкая, а на косе всегда дует. Встречаемся у маяка в 6:30.',
      'В группе не больше двенадцати человек — так тише. Дети до восьми лет приходят только со взрослыми.',
    ],
    buttons: ['Записаться', 'Таблица приливов', 'Как добраться'],
  },
  he: {
    headings: ['זריחה מעל ביצת המלח', 'מה משאיר הים כשהוא נסוג', 'סופרים חופמים בלשון הצפונית'],
    paragraphs: [
      'אנחנו הולכים שעתיים על שביל העץ לפני שהגאות עולה, ומקשיבים לציפורים שמתעוררות זו אחר זו.',
      'הביאו מגפיים גבוהים: הקרקע רכה אחרי הגשם. נפגשים ב־6:30 ליד המגדלור (Gull Point) וחוזרים עד 11:00.',
      'עד שנים־עשר אנשים בקבוצה. ילדים מתחת לגיל 8 מגיעים רק עם מבוגר, בבקשה.',
    ],
    buttons: ['להרשמה', 'שעות הגאות', 'מפת השבילים'],
  },
  ar: {
    headings: ['شروق فوق المستنقع', 'ما يتركه البحر', 'عدّ الطيور في اللسان الشمالي'],
    paragraphs: [
      'نمشي ساعتين على الممرّ الخشبي قبل أن يعلو الماء، ونصغي إلى الطيور وهي تستيقظ واحدًا بعد آخر.',
      'أحضروا أحذية طويلة ومعطفًا خفيفًا؛ فالأرض رخوة بعد المطر، والريح لا تهدأ عند المنارة (Gull Point) أبدًا.',
      'اثنا عشر شخصًا على الأكثر في كلّ مجموعة، والأطفال دون 8 سنوات مع أهلهم.',
    ],
    buttons: ['احجز مكانك', 'مواعيد المدّ', 'الخريطة'],
  },
  hi: {
    headings: ['खारे दलदल पर सूर्योदय', 'ज्वार उतरने पर समुद्र क्या छोड़ जाता है', 'उत्तरी तट पर पक्षियों की गिनती'],
    paragraphs: [
      'हम पानी चढ़ने से पहले लकड़ी के रास्ते पर दो घंटे चलते हैं और पक्षियों को एक-एक करके जागते हुए सुनते हैं।',
      'ऊँचे जूते और हल्की जैकेट लाएँ; बारिश के बाद ज़मीन नरम रहती है। हम सुबह 6:30 बजे प्रकाशस्तंभ के पास मिलते हैं।',
      'एक समूह में अधिक से अधिक बारह लोग। आठ वर्ष से छोटे बच्चे किसी बड़े के साथ ही आएँ।',
    ],
    buttons: ['जगह बुक करें', 'ज्वार का समय', 'रास्ते का नक्शा'],
  },
  th: {
    headings: ['รุ่งเช้าเหนือบึงน้ำเค็ม', 'สิ่งที่ทะเลทิ้งไว้เมื่อน้ำลง', 'นับนกชายเลนที่แหลมเหนือ'],
    paragraphs: [
      'เราเดินบนทางไม้สองชั่วโมงก่อนน้ำจะขึ้นและฟังเสียงนกตื่นทีละตัว',
      'กรุณานำรองเท้าบูทและเสื้อกันลมมาด้วย พื้นดินนุ่มหลังฝนตก นัดพบเวลา 6:30 ที่ประภาคาร',
      'กลุ่มละไม่เกินสิบสองคน เด็กอายุต่ำกว่าแปดปีต้องมากับผู้ใหญ่',
    ],
    buttons: ['จองที่นั่ง', 'เวลาน้ำขึ้น', 'แผนที่'],
  },
  ja: {
    headings: ['塩沼に昇る朝日を見る会', '潮が引いたあとに残るもの', '北の岬でシギを数える'],
    paragraphs: [
      '潮が満ちる前に木道を二時間歩き、鳥たちが一羽ずつ目を覚ます声に耳を澄まします。「静かに」が合い言葉です。',
      '長靴と上着をお持ちください（雨のあとは地面がやわらかいため）。集合は午前6時30分、灯台の前です。',
      'カニ、貝、小さなヒトデ、そして子どもたちのたくさんの質問。１グループは12名まで。ちょっと早めにどうぞ！',
    ],
    buttons: ['予約する', '潮の時刻表', 'アクセス'],
  },
  zh: {
    headings: ['盐沼上的日出', '退潮之后，大海留下了什么', '在北岬数鸻鹬'],
    paragraphs: [
      '涨潮之前，我们沿着木栈道走两个小时，听鸟儿一只接一只地醒来。请保持安静，“轻声”是我们的约定。',
      '请带长靴和防风外套（雨后地面松软）。集合时间：早上6:30，地点：灯塔前；返回时间约11:00。',
      '螃蟹、贝壳、小海星，还有孩子们的许多问题。每组最多12人，八岁以下儿童须由成人陪同。',
    ],
    buttons: ['预约', '潮汐时刻', '路线图'],
  },
  tr: {
    headings: ['ilkbahar izleri ıssız koyda', 'istavrit ile iskele', 'ığdır ilinden gelen İnci’nin ısrarı'],
    paragraphs: [
      'Sular yükselmeden önce ahşap yolda iki saat yürüyor, kuşların birer birer uyanışını dinliyoruz.',
      'Lütfen uzun çizme getirin: yağmurdan sonra zemin yumuşak olur. Buluşma saati 6.30, fenerin önü.',
      'Gruplar en çok on iki kişiliktir. Sekiz yaşından küçükler bir yetişkinle gelir.',
    ],
    buttons: ['yer ayırt', 'gelgit saatleri', 'iskele yolu'],
  },
  nl: {
    headings: ['ijsvogels langs het ijzeren hek', 'zes uur ’s ochtends bij het wad', 'ĳverige ijsberen en één eb'],
    paragraphs: [
      'We lopen twee uur over het vlonderpad voordat het water komt, en horen de vogels één voor één wakker worden.',
      'Neem laarzen mee: de grond is zacht na regen. We verzamelen om half zeven bij de vuurtoren op de kop.',
      'Hooguit twaalf mensen in een groep; kinderen onder de acht jaar komen met een volwassene.',
    ],
    buttons: ['ik ga mee', 'getijden', 'ijsclub en kaart'],
  },
  en: {
    headings: ['Dawn over the salt marsh', 'What the sea leaves when it goes', 'Counting waders on the north spit'],
    paragraphs: [
      'We walk the boards for two hours before the water comes, and listen to the birds wake one after another.',
      'Please bring tall boots and a light jacket; the ground stays soft after rain, and the wind never rests at the point.',
      'Twelve people to a group, no more. Children under eight come with a grown-up, dogs stay at home.',
    ],
    buttons: ['Book a place', 'Tide times', 'Find the path'],
  },
};

/** Words on which the break rules differ: the characters between letters. */
export const hardWords = [
  'under-12s', '24/7', 'and/or', 'km/h', 'tide–table', 'sea—shore', 'well\u2011known', 'e-mail:', 'post@station.example', 'https://station.example/walks/dawn?day=3&place=2#boots',
  '(half-day)', '[full]', '{both}', '5 %', '12\u00A0°C', '3\u00A0m', '10–12', '6:30', '£4.50', '€3,–', '#7', 'A-level', 'T-V-shaped', 'AVA-TAV', 'x/y/z', 'C++', 'a+b', 'rock’n’roll',
  '“quoted”', '‘single’', '…and', 'so…', 'what?!', 'yes/no?', '50%(half)', '$5', 'C:\\tides\\today', 'one|two', 'tide=high', '~40', 'co\u00ADop\u00ADer\u00ADate', 'zero\u200Bwidth\u200Bspace', 'word\u2060join\u2060er',
  'thin\u2009space', 'em\u2003space', 'soft\u00ADhy\u00ADphen\u00ADa\u00ADtion', '½-inch', 'No.7', 'v2.0-beta', 'file_name.txt', 'left->right', '<tag>', 'Q&A', '--flag', '-5', '(-3)', '3-5', 'ab/12', 'ab-12-cd', '12-ab', '\u200Bstart',
];
